#include <catch2/catch.hpp>

#include "asking.hpp"
#include "steel/seferian.hpp"

// Regression, not print: computed from the published formula outside this program; no worked example could be
// read. Tolerance: half of the last digit.

using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

struct Row {
    const char* name;
    Percent metal;
    double wall_mm;
    double chemical;
    double total;
    double degC;
};

const Row rows[] = {
    {"S355J2", {{"C", 0.18}, {"Mn", 1.40}, {"Cr", 0.05}, {"Ni", 0.05}}, 25, 0.3439, 0.3869, 129.5},
    {"1045", {{"C", 0.465}, {"Mn", 0.75}}, 25, 0.5483, 0.6169, 212.0},
    {"1045", {{"C", 0.465}, {"Mn", 0.75}}, 50, 0.5483, 0.6854, 231.0},
    {"4130", {{"C", 0.305}, {"Mn", 0.50}, {"Cr", 0.95}, {"Mo", 0.20}}, 12, 0.4817, 0.5106, 178.7},
    {"4140", {{"C", 0.405}, {"Mn", 0.875}, {"Cr", 0.95}, {"Mo", 0.20}}, 25, 0.6233, 0.7012, 235.1},
    {"4140", {{"C", 0.405}, {"Mn", 0.875}, {"Cr", 0.95}, {"Mo", 0.20}}, 50, 0.6233, 0.7792, 254.6},
    {"4340",
     {{"C", 0.405}, {"Mn", 0.70}, {"Cr", 0.80}, {"Ni", 1.825}, {"Mo", 0.25}},
     50,
     0.6925,
     0.8656,
     274.6},
    {"8620",
     {{"C", 0.205}, {"Mn", 0.80}, {"Cr", 0.50}, {"Ni", 0.55}, {"Mo", 0.20}},
     25,
     0.3956,
     0.4450,
     154.6},
};

} // namespace

TEST_CASE("regression: carbon and preheat by Seferian") {
    for (const Row& row : rows) {
        INFO(row.name << ", " << row.wall_mm << " mm");
        ringfill::steel::Composition metal;
        metal.stated.insert(row.metal.begin(), row.metal.end());
        CHECK_THAT(ringfill::steel::chemical_carbon(metal), WithinAbs(row.chemical, 0.00005 + 1e-9));
        CHECK_THAT(ringfill::steel::seferian_carbon(ringfill::steel::chemical_carbon(metal), row.wall_mm),
                   WithinAbs(row.total, 0.00005 + 1e-9));
        const Said said = ask_steel("preheat", with({{"wall_m", row.wall_mm / 1e3}}, "base_", row.metal));
        CHECK((said.method(seferian_name).flags & ~RF_OUT_OF_COMPOSITION) == RF_SECOND_OPINION);
        CHECK_THAT(degC(said.method(seferian_name)), WithinAbs(row.degC, 0.05 + 1e-9));
    }
}
