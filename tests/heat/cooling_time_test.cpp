#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/heat/arc_energy.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

std::optional<CoolingTime> cooled(double q_kj_mm, double start_degC, double wall_mm) {
    return cooling_time(in_si<EnergyPerLength>(q_kj_mm * 1e6), celsius(start_degC), millimetres(wall_mm));
}

} // namespace

// Regression, not publication: EN 1011-2 annex D evaluated apart from this library, F2 = F3 = 1.
TEST_CASE("regression: cooling time is that of the published formula") {
    struct Row {
        double q, start, wall, thick, thin, transition;
        bool is_thick;
    };
    const Row rows[] = {
        {1, 20, 50, 5.288, 0.455, 14.659, true},    {1, 20, 10, 5.288, 11.364, 14.659, false},
        {1, 100, 10, 6.643, 16.290, 15.659, false}, {1, 150, 40, 7.846, 1.324, 16.432, true},
        {0.8, 20, 6, 4.231, 20.202, 13.111, false}, {1.5, 150, 12, 11.769, 33.103, 20.125, false},
        {2, 200, 30, 19.000, 12.741, 24.566, true}, {2.5, 125, 25, 18.000, 18.498, 25.343, false},
        {0.5, 20, 5, 2.644, 11.364, 10.365, false}, {1.2, 250, 20, 14.269, 14.738, 20.326, false}};
    for (const Row& row : rows) {
        CAPTURE(row.q, row.start, row.wall);
        const CoolingTime found = cooled(row.q, row.start, row.wall).value();
        CHECK_THAT(found.thick.value(), WithinAbs(row.thick, 0.001));
        CHECK_THAT(found.thin.value(), WithinAbs(row.thin, 0.001));
        CHECK_THAT(mm(found.transition), WithinAbs(row.transition, 0.001));
        CHECK(found.is_thick == row.is_thick);
        CHECK(found.t85() == (row.is_thick ? found.thick : found.thin));
    }
}

TEST_CASE("at the transition thickness both forms give the same time") {
    for (const double q : {0.3, 1.0, 3.0})
        for (const double start : {-20.0, 20.0, 300.0, 499.0}) {
            CAPTURE(q, start);
            const double wall = mm(cooled(q, start, 10).value().transition);
            const CoolingTime there = cooled(q, start, wall).value();
            CHECK_THAT(there.thick.value(), WithinRel(there.thin.value(), 1e-9));
            CHECK(cooled(q, start, wall * 1.001)->is_thick);
            CHECK_FALSE(cooled(q, start, wall * 0.999)->is_thick);
        }
}

TEST_CASE("the formula ends at 500 degrees and needs heat and a wall") {
    CHECK(cooled(1, 499.9, 20));
    CHECK_FALSE(cooled(1, 500, 20));
    CHECK_FALSE(cooled(0, 20, 20));
    CHECK_FALSE(cooled(1, 20, 0));
    CHECK(cooled(1, 20, 0.5));
    CHECK(cooled(0.1, 20, 20));
    CHECK_FALSE(cooled(std::nan(""), 20, 20));
}
