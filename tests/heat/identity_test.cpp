#include <catch2/catch.hpp>

#include <ringfill/heat/identity.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

const Base& base_of(const std::string& base) {
    std::vector<Fault> faults;
    return *find_base(testing::shop().registry, base, "bores[0].base", faults);
}

WornBore bore_with(std::vector<std::pair<std::string, double>> composition,
                   std::optional<bool> magnetic = std::nullopt) {
    WornBore bore;
    bore.path = "bores[0]";
    bore.composition = std::move(composition);
    bore.magnetic = magnetic;
    return bore;
}

std::string doubt(const WornBore& bore, const std::string& base) {
    return identity_doubt(bore, base_of(base)).value_or("");
}

} // namespace

TEST_CASE("a magnet speaks against every metal that it contradicts, and for the others") {
    const std::string lets_go = "a magnet does not hold, so it is no ferritic and no martensitic steel";
    for (const char* base : {"steel/C45", "steel/unknown", "stainless/410"}) {
        CHECK(doubt(bore_with({}, false), base) == lets_go);
        CHECK(doubt(bore_with({}, true), base).empty());
        CHECK(doubt(bore_with({}), base).empty());
    }
    CHECK(doubt(bore_with({}, true), "stainless/304") == "a magnet holds, so it is no austenitic metal");
    CHECK(doubt(bore_with({}, false), "stainless/304").empty());
    CHECK(doubt(bore_with({}, true), "manganese_steel/A128-A") ==
          "a magnet holds, so it is no austenitic metal");
    CHECK(doubt(bore_with({}, false), "cast_iron/EN-GJL-250") ==
          "a magnet does not hold, so it is no grey and no nodular iron");
    CHECK(doubt(bore_with({}, true), "cast_iron/EN-GJL-250").empty());
}

// A steel certificate speaks against cast iron, whose carbon is over 2.5 %, and one of carbon steel against
// manganese steel, which holds 11 % at least.
TEST_CASE("a certificate of steel speaks against cast iron and against manganese steel") {
    CHECK(doubt(bore_with({{"C", 0.45}}), "cast_iron/EN-GJL-250") ==
          "its certificate says otherwise: C 0.45 % is under the 2.5 % of EN-GJL-250");
    CHECK(doubt(bore_with({{"Mn", 0.8}}), "manganese_steel/A128-A") ==
          "its certificate says otherwise: Mn 0.8 % is under the 11 % of A128-A");
}

TEST_CASE("a certificate of no ferritic steel speaks against one, whatever its name") {
    for (const char* base : {"steel/unknown", "steel/4140", "steel/S355J2"}) {
        CHECK(doubt(bore_with({{"Mn", 13}}), base) ==
              "with the 13 % Mn of its certificate it is no ferritic steel");
        CHECK_FALSE(doubt(bore_with({{"Cr", 18}}), base).empty());
        CHECK_FALSE(doubt(bore_with({{"Ni", 10.1}}), base).empty());
        CHECK_FALSE(doubt(bore_with({{"C", 3.4}}), base).empty());
        CHECK(doubt(bore_with({{"C", 0.4}, {"Mn", 1.6}, {"Cr", 9.5}}), base).empty());
    }
}

// Lean manganese steel, tool steel and iron (common practice, no source): none is heated as 4140 is.
TEST_CASE("a certificate of lean manganese steel or of very much carbon speaks against ferritic steel") {
    for (const char* base : {"steel/unknown", "steel/4140", "steel/1045"}) {
        CHECK(doubt(bore_with({{"C", 1.1}, {"Mn", 8}}), base) ==
              "with the 8 % Mn of its certificate it is no ferritic steel");
        CHECK_FALSE(doubt(bore_with({{"C", 1.2}, {"Mn", 9.5}}, true), base).empty());
        CHECK_FALSE(doubt(bore_with({{"Mn", 5}}), base).empty()); // its carbon may be high
        CHECK(doubt(bore_with({{"C", 0.1}, {"Mn", 5}}), base).empty());
        CHECK(doubt(bore_with({{"C", 0.6}, {"Mn", 1.9}}), base).empty());
        CHECK(doubt(bore_with({{"C", 1.95}, {"Si", 2}}), base) ==
              "with the 1.95 % C of its certificate it is no ferritic steel");
        CHECK(doubt(bore_with({{"C", 1.1}}), base).empty()); // bearing steel
    }
}

TEST_CASE("a certificate outside a stainless grade speaks against it, low or high") {
    CHECK(doubt(bore_with({{"Cr", 12.5}}), "stainless/304") ==
          "its certificate says otherwise: Cr 12.5 % is under the 17.5 % of 304");
    CHECK(doubt(bore_with({{"C", 0.2}}), "stainless/410") ==
          "its certificate says otherwise: C 0.2 % is over the 0.15 % of 410");
    // usual residuals that the grade does not name
    CHECK(doubt(bore_with({{"Cr", 18.2}, {"Ni", 8.1}, {"Mo", 0.4}, {"Cu", 0.5}}), "stainless/304").empty());
}

TEST_CASE("a certificate over a ferritic grade is of another steel, by the elements that harden") {
    const auto over = [](std::vector<std::pair<std::string, double>> composition, const std::string& base) {
        return not_of_grade(bore_with(std::move(composition)), base_of(base)).value_or("");
    };
    CHECK(over({{"C", 0.52}}, "steel/C45").empty()); // a product analysis may pass the ladle's by so much
    CHECK(over({{"C", 0.53}}, "steel/C45") == "C 0.53 % is over the 0.5 % of C45");
    CHECK(over({{"C", 0.50}, {"Si", 2}, {"S", 0.3}}, "steel/C45").empty());
    CHECK(over({{"B", 0.002}}, "steel/C45") == "B 0.002 % is over the 0.0008 % of C45"); // EN 10020
    CHECK(over({{"Ni", 2}}, "steel/unknown") ==
          "Ni 2 % is over the 0.3 % of 4140, which unknown metal counts as");
    CHECK(over({{"C", 0.2}}, "steel/unknown").empty());
}

TEST_CASE("fractions typed for percent are refused") {
    const auto faults = certificate_faults(bore_with({{"C", 0.0046}, {"Mn", 0.0068}}), base_of("steel/C45"));
    REQUIRE(faults.size() == 2);
    CHECK(to_string(faults[0]) ==
          "bores[0].composition.C: 0.0046 is less than the 0.02 % that every machine steel holds; write "
          "percent by mass as the certificate prints it, or leave the element out");
    CHECK(faults[1].place.path == "bores[0].composition.Mn");
    CHECK(certificate_faults(bore_with({{"C", 0.02}, {"Mn", 0.1}}), base_of("steel/C45")).empty());
    CHECK(certificate_faults(bore_with({{"C", 0.015}}), base_of("stainless/304")).empty());
}
