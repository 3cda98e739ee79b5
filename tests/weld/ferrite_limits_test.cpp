#include <catch2/catch.hpp>

#include <ringfill/weld/ferrite.hpp>

using namespace ringfill;

namespace {

Composition sourced(const Shares& shares) {
    Composition composition;
    for (const auto& [element, percent] : shares)
        composition.emplace_back(element, Sourced<double>{percent, "own"});
    return composition;
}

/// Whether the ferrite of a layer of this metal is told, over this base metal.
bool is_told(const Shares& filler_metal, const Shares& base_metal = {{"C", 0.2}, {"Mn", 1}}) {
    Base base;
    base.composition = sourced(base_metal);
    Filler filler;
    filler.typical = sourced(filler_metal);
    Dilution dilution;
    dilution.share = {0.2, "own"};
    dilution.base_left = {0.2};
    return layer_metals({}, base, filler, dilution).has_value();
}

} // namespace

// Section 6: Cr 16 and Ni 5 % or more, Mn 4 % at most, and no copper alloy (over 5 % of it) below [practice].
TEST_CASE("the estimate of ferrite holds up to the limits of the metal it was made for") {
    CHECK(is_told({{"Cr", 16}, {"Ni", 8}}));
    CHECK_FALSE(is_told({{"Cr", 15.9}, {"Ni", 8}}));
    CHECK(is_told({{"Cr", 20}, {"Ni", 5}}));
    CHECK_FALSE(is_told({{"Cr", 20}, {"Ni", 4.9}}));
    CHECK(is_told({{"Cr", 20}, {"Ni", 8}, {"Mn", 4}}));
    CHECK_FALSE(is_told({{"Cr", 20}, {"Ni", 8}, {"Mn", 4.1}}));
    CHECK(is_told({{"Cr", 20}, {"Ni", 8}}, {{"C", 0.2}, {"Mn", 1}, {"Cu", 5}}));
    CHECK_FALSE(is_told({{"Cr", 20}, {"Ni", 8}}, {{"C", 0.2}, {"Mn", 1}, {"Cu", 5.1}}));
}
