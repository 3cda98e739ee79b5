#include <catch2/catch.hpp>

#include <ringfill/weld/ferrite.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

/// A metal with what the formulas give for it.
struct Row {
    const char* name;
    Shares metal;
    double wrc_chromium;
    double wrc_nickel;
    double chromium; ///< Schaeffler
    double nickel;
    double ferrite; ///< before it is held at 0
};

const Shares metal_309L = {{"C", .02}, {"Si", .5}, {"Mn", 1.8}, {"Cr", 24},
                           {"Ni", 13}, {"Mo", .2}, {"Cu", .1},  {"N", .05}};
const Shares metal_A36 = {{"C", .20},  {"Si", .25}, {"Mn", .9},  {"Cr", .05},
                          {"Ni", .05}, {"Mo", .01}, {"Cu", .15}, {"N", .008}};
const Shares metal_4140 = {{"C", .405}, {"Si", .25}, {"Mn", .875}, {"Cr", .95}, {"Mo", .20}, {"N", .008}};

// Computed from the published formulas by another program, with invented compositions; no printed answers:
// they show that the arithmetic is right, not the coefficients.
const Row rows[] = {
    {"308L",
     {{"C", .02}, {"Si", .5}, {"Mn", 1.8}, {"Cr", 20}, {"Ni", 10}, {"Mo", .1}, {"Cu", .1}, {"N", .05}},
     20.100,
     11.725,
     20.850,
     11.500,
     10.4},
    {"309L", metal_309L, 24.200, 14.725, 24.950, 14.500, 14.3},
    {"316L",
     {{"C", .02}, {"Si", .5}, {"Mn", 1.8}, {"Cr", 19}, {"Ni", 12}, {"Mo", 2.5}, {"Cu", .1}, {"N", .05}},
     21.500,
     13.725,
     22.250,
     13.500,
     9.0},
    {"312",
     {{"C", .10}, {"Si", .5}, {"Mn", 1.8}, {"Cr", 30}, {"Ni", 9}, {"Mo", .2}, {"Cu", .1}, {"N", .05}},
     30.200,
     13.525,
     30.950,
     12.900,
     36.8},
    {"309L with 30 % of A36", layer_over(metal_A36, metal_309L, 0.30), 16.958, 12.482, 17.595, 12.100, -1.1},
    {"309L with 15 % of A36", layer_over(metal_A36, metal_309L, 0.15), 20.579, 13.603, 21.273, 13.300, 6.6},
    {"309L with 30 % of 4140", layer_over(metal_4140, metal_309L, 0.30), 17.285, 14.608, 17.922, 13.926,
     -5.2},
};

Composition sourced(const Shares& shares) {
    Composition composition;
    for (const auto& [element, percent] : shares)
        composition.emplace_back(element, Sourced<double>{percent, "own"});
    return composition;
}

Dilution of(double share, std::size_t layers) {
    Dilution dilution;
    dilution.share = {share, "own"};
    for (std::size_t i = 0; i < layers; ++i)
        dilution.base_left.push_back(base_left(share, static_cast<int>(i) + 1));
    return dilution;
}

} // namespace

TEST_CASE("the equivalents of both diagrams and the estimate of ferrite follow their formulas") {
    for (const Row& row : rows) {
        INFO(row.name);
        const Equivalents wrc = wrc_1992(row.metal);
        CHECK_THAT(wrc.chromium, WithinAbs(row.wrc_chromium, 0.001));
        CHECK_THAT(wrc.nickel, WithinAbs(row.wrc_nickel, 0.001));
        const Equivalents own = schaeffler(row.metal);
        CHECK_THAT(own.chromium, WithinAbs(row.chromium, 0.001));
        CHECK_THAT(own.nickel, WithinAbs(row.nickel, 0.001));
        CHECK_THAT(ferrite(own), WithinAbs(std::max(0.0, row.ferrite), 0.1));
    }
}

// An exam question, read without its answer: Cr 18, Mo 2, Si 1, Nb 0.5; by hand 18 + 2 + 1.5 + 0.25.
TEST_CASE("silicon and niobium count in the chromium equivalent") {
    CHECK_THAT(schaeffler({{"Cr", 18}, {"Mo", 2}, {"Si", 1}, {"Nb", 0.5}}).chromium, WithinAbs(21.75, 1e-12));
}

TEST_CASE("the range of WRC-1992 ends where it was drawn for") {
    CHECK(in_wrc_1992_range({{"Mn", 10}, {"Mo", 3}, {"N", 0.2}, {"Si", 1}}));
    for (const char* element : {"Mn", "Mo", "N", "Si"})
        CHECK_FALSE(in_wrc_1992_range({{element, 10.1}}));
    CHECK_FALSE(in_wrc_1992_range({{"Mo", 3.1}}));
    CHECK_FALSE(in_wrc_1992_range({{"N", 0.21}}));
    CHECK_FALSE(in_wrc_1992_range({{"Si", 1.1}}));
}

TEST_CASE("the first three layers of stainless metal are thinned one after the other") {
    Base base;
    base.composition = sourced({{"C", 9}, {"Mn", 9}});
    base.typical = sourced(metal_A36);
    Filler filler;
    filler.typical = sourced(metal_309L);
    const auto metals = layer_metals({}, base, filler, of(0.30, 5)).value();
    REQUIRE(metals.layers.size() == 3);
    CHECK(metals.base_from == "what is usual of the grade");
    CHECK(metals.wrc);
    CHECK_THAT(schaeffler(metals.layers[0]).chromium, WithinAbs(17.595, 0.001));
    CHECK(ferrite(schaeffler(metals.layers[2])) > ferrite(schaeffler(metals.layers[1])));
    CHECK_THAT(schaeffler(metals.layers[2]).chromium, WithinAbs(24.950 - 0.027 * (24.950 - 0.435), 0.001));
    CHECK(layer_metals({}, base, filler, of(0.30, 1))->layers.size() == 1);
}

TEST_CASE("the certificate goes before what is usual, and that before the limits") {
    Base base;
    base.composition = sourced({{"C", 0.5}, {"Mn", 1}});
    WornBore bore;
    CHECK(share_of(base_shares(bore, base), "C") == 0.5);
    base.typical = sourced({{"C", 0.4}});
    CHECK(share_of(base_shares(bore, base), "C") == 0.4);
    bore.composition = {{"C", 0.45}, {"Cr", 1}};
    CHECK(share_of(base_shares(bore, base), "C") == 0.45);
    CHECK(share_of(base_shares(bore, base), "Cr") == 1);
}

TEST_CASE("a certificate that names some elements is told as part of what the base metal is known by") {
    Base base;
    base.composition = sourced({{"C", 0.5}, {"Mn", 1}, {"P", 0.04}});
    Filler filler;
    filler.typical = sourced(metal_309L);
    const auto from = [&](const decltype(WornBore::composition)& certificate) {
        WornBore bore;
        bore.composition = certificate;
        return layer_metals(bore, base, filler, of(0.2, 1)).value().base_from;
    };
    CHECK(from({}) == "the limits of its standard");
    CHECK(from({{"P", 0.02}}) == "the mill certificate in part, the rest by the limits of its standard");
    CHECK(from({{"C", 0.45}, {"Mn", 0.7}, {"P", 0.02}}) == "the mill certificate");
}

// By hand: nickel of at least 72 % in the base metal gives the first layer 0.85 x 13 + 0.15 x 72 = 21.85 %.
TEST_CASE("an element that the standard gives a least share of counts with it") {
    Base base;
    base.structure = "nickel";
    base.composition = sourced({{"C", 0.15}, {"Cr", 17}});
    Filler filler;
    filler.typical = sourced(metal_309L);
    CHECK(no_ferrite({}, base, filler) ==
          "nothing here says how much Ni is in " + base.name + "; its mill certificate would");
    CHECK_FALSE(layer_metals({}, base, filler, of(0.15, 1)));
    base.composition_min = sourced({{"Ni", 72}, {"Cr", 14}});
    CHECK(no_ferrite({}, base, filler).empty());
    const auto metals = layer_metals({}, base, filler, of(0.15, 1)).value();
    CHECK_THAT(share_of(metals.layers[0], "Ni"), WithinAbs(21.85, 1e-9));
    CHECK_THAT(share_of(metals.layers[0], "Cr"), WithinAbs(0.85 * 24 + 0.15 * 17, 1e-9)); // not the least
    CHECK(ferrite(schaeffler(metals.layers[0])) == 0);
}

TEST_CASE("why no ferrite is estimated is said") {
    Base base;
    base.name = "B";
    base.composition = sourced({{"C", 0.2}, {"Mn", 1}});
    Filler filler;
    filler.name = "F";
    CHECK(no_ferrite({}, base, filler).empty()); // no stainless metal, nothing to say
    filler.composition = sourced({{"Cr", 25}, {"Ni", 14}});
    CHECK(no_ferrite({}, base, filler) == "the tables know the limits of F, not its usual metal");
    filler.typical = sourced({{"Cr", 18.5}, {"Ni", 8.5}, {"Mn", 7}});
    CHECK(no_ferrite({}, base, filler) ==
          "the estimate was made for metal with up to 4 % of manganese, and F has 7");
    filler.typical = sourced(metal_309L);
    base.composition = sourced({{"C", 0.2}});
    CHECK(no_ferrite({}, base, filler) ==
          "nothing here says how much Mn is in B; its mill certificate would");
    base.structure = "copper";
    CHECK(no_ferrite({}, base, filler) ==
          "the estimate knows no layer with much copper in it, and B brings it");
}

TEST_CASE("ferrite is told of austenitic chromium-nickel metal only") {
    Filler filler;
    Base base;
    base.composition = sourced({{"C", 0.2}, {"Mn", 1}});
    CHECK_FALSE(layer_metals({}, base, filler, of(0.2, 2)));
    filler.typical = sourced({{"Cr", 12.5}, {"Ni", 0.5}});
    CHECK_FALSE(layer_metals({}, base, filler, of(0.2, 2)));
    filler.typical = sourced({{"Cr", 18.5}, {"Ni", 8.5}, {"Mn", 6.5}});
    CHECK_FALSE(layer_metals({}, base, filler, of(0.2, 2)));
    filler.typical = sourced({{"Cr", 20}, {"Ni", 10}});
    CHECK(layer_metals({}, base, filler, of(0.2, 2)));
    CHECK_FALSE(layer_metals({}, base, filler, of(0.2, 2))->wrc); // its nitrogen is not known
}

// WRC-1992, by hand: 18 + 2 + 0.7 x 0.5.
TEST_CASE("niobium counts in the chromium equivalent of WRC-1992") {
    CHECK_THAT(wrc_1992({{"Cr", 18}, {"Mo", 2}, {"Nb", 0.5}}).chromium, WithinAbs(20.35, 1e-12));
}
