#include <catch2/catch.hpp>

#include <ringfill/boring/bar.hpp>
#include <ringfill/boring/cuts.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

Turning rpm(double value) {
    return in_si<Turning>(value / factor::minute);
}
Length inches(double value) {
    return in_si<Length>(value * factor::inch);
}
double feet_a_minute(Speed speed) {
    return m_min(speed) / 0.3048;
}
double minutes(Time time) {
    return time.value() / factor::minute;
}

/// A printed cutting speed on a diameter.
struct SpeedRow {
    const char* source;
    Length diameter;
    double rpm;
    double printed_m_min;
    double tolerance; ///< of the last printed digit, and of the source's pi
};

/// A printed time of one pass.
struct TimeRow {
    const char* source;
    Length way;
    Speed feed;
    double printed_min;
    double tolerance;
};

Speed mm_a_minute(double value) {
    return in_si<Speed>(value * 1e-3 / factor::minute);
}

} // namespace

// M01 and M08: open technical pages of two makers of cutting tools, read; the second prints 117, which is
// 117.8 cut off. M05: the first maker's page in inches, read; it takes pi as 3.14. M10: Kalpakjian and
// Schmid, example 22.1, on the diameter before the cut; M23: Sharma, example 15.9, 0.27 m/s; both read in an
// open companion to the textbooks.
TEST_CASE("cutting speeds on a diameter are those of printed examples") {
    const SpeedRow rows[] = {
        {"M01", millimetres(50), 700, 110, 0.5},
        {"M05", inches(2), 700, 366.33 * 0.3048, 0.06},
        {"M08", millimetres(150), 250, 117, 1},
        {"M10", inches(0.5), 400, 628 * factor::inch, 0.5 * factor::inch},
        {"M23", millimetres(12.70), 400, 0.27 * 60, 0.005 * 60},
    };
    for (const SpeedRow& row : rows) {
        INFO(row.source);
        const Speed speed = cutting_speed_at(rpm(row.rpm), row.diameter);
        CHECK_THAT(m_min(speed), WithinAbs(row.printed_m_min, row.tolerance));
        CHECK_THAT(rev_min(bar_speed(speed, row.diameter, {}).computed), WithinAbs(row.rpm, 1e-9 * row.rpm));
    }
    CHECK_THAT(feet_a_minute(cutting_speed_at(rpm(700), inches(2))),
               WithinAbs(366.52, 0.005)); // with true pi
}

// M27: Sharma, example 22.4, companion: 21 m/min on 5 to 20 mm with six speeds in geometric steps; printed to
// 0.1 rev/min. The lowest belongs to the largest diameter, the highest to the smallest.
TEST_CASE("a printed row of spindle speeds spans its diameters, and one of it is picked for each") {
    const Speed speed = in_si<Speed>(21 / factor::minute);
    std::vector<Turning> row;
    for (const double printed : {334.2, 441.0, 581.9, 767.9, 1013.2, 1336.9})
        row.push_back(rpm(printed));
    CHECK_THAT(rev_min(bar_speed(speed, millimetres(20), {}).computed), WithinAbs(334.2, 0.05));
    CHECK_THAT(rev_min(bar_speed(speed, millimetres(5), {}).computed), WithinAbs(1336.9, 0.05));
    // US Army OD1645, lathe operations, read: where the exact speed is not there, the next lower one.
    const BarSpeed on_10 = bar_speed(speed, millimetres(10), row); // 668.5 by the formula
    CHECK_THAT(rev_min(on_10.used), WithinAbs(581.9, 1e-9));
    CHECK_FALSE(on_10.too_fast);
    CHECK(bar_speed(speed, millimetres(21), row).too_fast);
}

// M02 and M06: the first maker's pages, M09: a third maker's course, all read. M10 and M23 as above.
TEST_CASE("feeds and times of a pass are those of printed examples") {
    const TimeRow rows[] = {
        {"M06", inches(4), feed_rate(inches(0.008), rpm(1000)), 0.5, 1e-9},
        {"M09", millimetres(100), mm_a_minute(20), 5, 1e-9},
        {"M10", inches(6), in_si<Speed>(8 * factor::inch / factor::minute), 0.75, 1e-9},
        {"M23", millimetres(150), mm_a_minute(203.2), 0.74, 0.005},
    };
    for (const TimeRow& row : rows) {
        INFO(row.source);
        const Turning one = rpm(400);
        CHECK_THAT(minutes(cutting_time(row.way, row.feed / one, one)),
                   WithinAbs(row.printed_min, row.tolerance));
    }
    CHECK_THAT(mm_min(feed_rate(millimetres(0.24), rpm(500))), WithinAbs(120, 1e-9));          // M02
    CHECK_THAT(feed_rate(inches(0.008), rpm(1000)).value() * 60 / 0.0254, WithinAbs(8, 1e-9)); // M06, in/min
}

// M04: the first maker's page, read. M24: Ghosh and Mallik, problem 24, companion; a nose of 0.7 mm.
TEST_CASE("the height of feed marks is that of printed examples") {
    CHECK_THAT(micrometres(roughness(millimetres(0.2), millimetres(0.8)).peak_to_valley),
               WithinAbs(6.25, 1e-9));
    CHECK_THAT(micrometres(roughness(millimetres(0.125), millimetres(0.7)).peak_to_valley),
               WithinAbs(2.8, 0.05));
    // The maker's page in inches, read: 0.008 in a turn, nose 0.031 in, 258 micro-inch.
    CHECK_THAT(roughness(inches(0.008), inches(0.031)).peak_to_valley.value() / factor::inch * 1e6,
               WithinAbs(258, 0.5));
}
