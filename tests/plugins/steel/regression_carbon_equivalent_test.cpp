#include <catch2/catch.hpp>

#include "steel/carbon_equivalent.hpp"

// Regression, not print: these figures were computed from the published formulas outside this program, in
// double precision, rounded to four decimals. They prove the arithmetic, not the coefficients; no worked
// example of CEN or CET could be read. Tolerance: half of the last digit.

using namespace ringfill::steel;
using Catch::WithinAbs;

namespace {

constexpr double half_digit = 0.00005 + 1e-9;

struct Row {
    const char* name;
    Composition metal;
    double ce;
    double pcm;
    double cet;
    double cen;
};

// Elements are mid-range or invented. A nickel of 0 keeps the 0.03 for residual elements out.
const Row rows[] = {
    {"A36",
     {{{"C", 0.20}, {"Si", 0.25}, {"Mn", 0.90}, {"Cr", 0.05}, {"Ni", 0.05}, {"Mo", 0.01}, {"Cu", 0.15}}},
     0.3753,
     0.2648,
     0.3023,
     0.3813},
    {"S355J2",
     {{{"C", 0.18},
       {"Si", 0.40},
       {"Mn", 1.40},
       {"Cr", 0.05},
       {"Ni", 0.05},
       {"Cu", 0.10},
       {"V", 0.01},
       {"Nb", 0.02}}},
     0.4353,
     0.2727,
     0.3287,
     0.4437},
    {"1018", {{{"C", 0.175}, {"Si", 0.20}, {"Mn", 0.75}, {"Ni", 0}}}, 0.3000, 0.2192, 0.2500, 0.3017},
    {"1045", {{{"C", 0.465}, {"Si", 0.25}, {"Mn", 0.75}, {"Ni", 0}}}, 0.5900, 0.5108, 0.5400, 0.6004},
    {"4130",
     {{{"C", 0.305}, {"Si", 0.25}, {"Mn", 0.50}, {"Cr", 0.95}, {"Mo", 0.20}}},
     0.6183,
     0.3992,
     0.4225,
     0.6287},
    {"4140",
     {{{"C", 0.405}, {"Si", 0.25}, {"Mn", 0.875}, {"Cr", 0.95}, {"Mo", 0.20}}},
     0.7808,
     0.5179,
     0.5600,
     0.7912},
    {"4340",
     {{{"C", 0.405}, {"Si", 0.25}, {"Mn", 0.70}, {"Cr", 0.80}, {"Ni", 1.825}, {"Mo", 0.25}}},
     0.8533,
     0.5354,
     0.5856,
     0.8333},
    {"8620",
     {{{"C", 0.205}, {"Si", 0.25}, {"Mn", 0.80}, {"Cr", 0.50}, {"Ni", 0.55}, {"Mo", 0.20}}},
     0.5150,
     0.3008,
     0.3438,
     0.5112},
    {"A27 70-36", {{{"C", 0.35}, {"Si", 0.80}, {"Mn", 0.70}, {"Ni", 0}}}, 0.4667, 0.4117, 0.4200, 0.5000},
    {"G20Mn5", {{{"C", 0.20}, {"Si", 0.40}, {"Mn", 1.30}, {"Ni", 0.20}}}, 0.4300, 0.2817, 0.3350, 0.4386},
    {"400 HB plate",
     {{{"C", 0.15}, {"Si", 0.40}, {"Mn", 1.30}, {"Cr", 0.50}, {"Ni", 0.10}, {"Mo", 0.15}, {"B", 0.002}}},
     0.5033,
     0.2750,
     0.3225,
     0.4845},
    {"S690QL",
     {{{"C", 0.16},
       {"Si", 0.30},
       {"Mn", 1.30},
       {"Cr", 0.50},
       {"Ni", 0.50},
       {"Mo", 0.30},
       {"V", 0.03},
       {"Nb", 0.02},
       {"B", 0.002}}},
     0.5760,
     0.3013,
     0.3575,
     0.5577},
    {"A514 F",
     {{{"C", 0.15},
       {"Si", 0.25},
       {"Mn", 0.80},
       {"Cr", 0.525},
       {"Ni", 0.85},
       {"Mo", 0.50},
       {"V", 0.055},
       {"Cu", 0.325},
       {"B", 0.002}}},
     0.5777,
     0.3038,
     0.3438,
     0.5337},
};

} // namespace

TEST_CASE("regression: the carbon equivalents of thirteen steels") {
    for (const Row& row : rows) {
        INFO(row.name);
        CHECK_THAT(ce_iiw(row.metal), WithinAbs(row.ce, half_digit));
        CHECK_THAT(pcm(row.metal), WithinAbs(row.pcm, half_digit));
        CHECK_THAT(cet(row.metal), WithinAbs(row.cet, half_digit));
        CHECK_THAT(cen(row.metal), WithinAbs(row.cen, half_digit));
    }
}

TEST_CASE("regression: how far CEN counts the other elements") {
    for (const auto& [carbon, factor] : {std::pair{0.05, 0.5287},
                                         {0.10, 0.6550},
                                         {0.12, 0.7500},
                                         {0.15, 0.8843},
                                         {0.18, 0.9584},
                                         {0.20, 0.9804},
                                         {0.25, 0.9973}}) {
        INFO("C " << carbon);
        CHECK_THAT(cen_accommodation(carbon), WithinAbs(factor, half_digit));
    }
}
