#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

#include <ringfill/heat/arc_energy.hpp>
#include <ringfill/heat/hardness.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;

namespace {

/// Weld metal as it was measured, of a database of the University of Cambridge (MAP_DATA_WELD, rows of Cunha
/// 1982 and Hunt 1994): hardness, C, Si, Mn, Ni, Cr, Mo, Cu [%], heat input [kJ/mm], interpass [°C], whether
/// by electrode.
struct Measured {
    double hv, c, si, mn, ni, cr, mo, cu, q, t;
    bool electrode;
};

constexpr Measured rows[] = {{180, .07, .34, .95, 0, 0, 0, 0, 2.7, 250, true},
                             {220, .06, .28, .55, 1.26, 0, 0, .02, 2.2, 250, true},
                             {193, .09, .42, .93, 0, 0, .02, .08, 2.5, 250, true},
                             {213, .08, .33, .65, .50, .35, .01, .02, 2.4, 250, true},
                             {189, .07, .61, 1.07, 0, 0, 0, 0, 2.8, 250, true},
                             {181, .07, .21, .75, 0, 0, 0, 0, 2.6, 250, true},
                             {183, .09, .44, .90, 0, 0, 0, 0, 1.8, 150, true},
                             {184, .08, .35, .65, 1.20, 0, 0, 0, 1.8, 140, true},
                             {194, .06, .53, 1.15, 0, .02, 0, 0, 1.8, 150, true},
                             {180, .07, .47, .85, 0, 0, 0, 0, 1.8, 150, true},
                             {216, .07, .47, 1.10, 0, 0, 0, 0, 1.9, 140, true},
                             {191, .08, .49, .90, 0, .05, 0, 0, 1.9, 150, true},
                             {164, .05, .25, 1.15, 0, 0, 0, .12, 2.4, 200, false},
                             {265, .10, .18, 1.60, 0, 0, .50, .14, 2.4, 200, false},
                             {226, .09, .28, 1.52, 0, 0, .50, .10, 2.4, 200, false},
                             {193, .12, .22, 1.24, 0, 0, 0, .18, 1.7, 200, false},
                             {202, .15, .32, 1.20, 0, 0, 0, 0, 1.6, 200, false},
                             {193, .08, .21, 1.20, 0, 0, 0, 0, 1.7, 200, false},
                             {172, .10, .12, 1.20, 0, 0, 0, 0, 1.7, 200, false},
                             {257, .05, .29, .72, .77, .52, .23, 1.19, 2.0, 200, false},
                             {227, .05, .27, .75, .75, .50, .23, 1.05, 3.3, 200, false},
                             {224, .05, .26, .75, .75, .50, .24, 1.04, 4.6, 200, false},
                             {226, .05, .27, .77, .73, .49, .24, 1.04, 5.3, 200, false},
                             {234, .05, .26, .98, .54, .41, .27, .85, 2.0, 200, false},
                             {217, .05, .25, .98, .55, .42, .27, .81, 3.3, 200, false},
                             {213, .05, .24, .97, .53, .40, .26, .82, 4.6, 200, false},
                             {209, .04, .24, .98, .53, .40, .27, .82, 5.3, 200, false}};

} // namespace

// Multi-run weld metal is softened by later passes: the check is of bias and spread, not of single rows.
// Published for the heat-affected zone: a spread of 28 HV. These rows are 12 HV harder than the formula says,
// with a spread of 25 HV: the ± 60 HV that are told with an answer hold more than two spreads.
TEST_CASE("the hardness formula is off by a small bias and a spread near the published one") {
    double sum = 0;
    double squares = 0;
    double most = 0;
    int within_told = 0;
    for (const Measured& row : rows) {
        const double q = (row.electrode ? 0.8 : 1.0) * row.q;
        const auto cooling =
            cooling_time(in_si<EnergyPerLength>(q * 1e6), celsius(row.t), millimetres(20)).value();
        const Shares shares = {{"C", row.c},   {"Si", row.si}, {"Mn", row.mn}, {"Ni", row.ni},
                               {"Cr", row.cr}, {"Mo", row.mo}, {"Cu", row.cu}};
        const double error = yurioka_HV(shares, cooling.t85().value()).value() - row.hv;
        sum += error;
        squares += error * error;
        most = std::max(most, std::abs(error));
        within_told += std::abs(error) <= hardness_spread_HV ? 1 : 0;
    }
    const double n = static_cast<double>(std::size(rows));
    const double bias = sum / n;
    const double spread = std::sqrt(squares / n - bias * bias);
    INFO("bias " << bias << " HV, spread " << spread << " HV, farthest " << most << " HV");
    CHECK(std::abs(bias + 12.1) <= 0.5);
    CHECK(std::abs(spread - 24.8) <= 0.5);
    CHECK(most <= 80);
    CHECK(within_told >= 25);
}

TEST_CASE("hardness falls with the cooling time between martensite and the soft end") {
    const Shares shares = {{"C", 0.18}, {"Si", 0.4}, {"Mn", 1.4}};
    double before = 1'000;
    for (double t85 = 0.5; t85 < 500; t85 *= 1.5) {
        const double hardness = yurioka_HV(shares, t85).value();
        CHECK(hardness <= before + 1e-9);
        before = hardness;
    }
    CHECK_FALSE(yurioka_HV({{"C", 0.9}}, 5));
    CHECK_FALSE(yurioka_HV({{"C", 0.1}, {"Cr", 9}}, 5));
}
