#include <catch2/catch.hpp>

#include <ringfill/fault/fault.hpp>
#include <ringfill/survey/skim.hpp>

#include "fault_figures.hpp"
#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

using Lines = std::vector<std::string>;

constexpr double pi = std::numbers::pi;

Length mm(double value) {
    return millimetres(value);
}

/// A bore of 90 mm and 100 mm long, worn to 93.4 mm and 0.4 mm to one side.
WornBore arm_root() {
    WornBore bore;
    bore.name = "arm root";
    bore.path = "bores[0]";
    bore.finish_diameter = mm(90);
    bore.length = mm(100);
    bore.boss_diameter = mm(180);
    bore.worn = Worn{mm(93.4), mm(0.4), Angle()};
    bore.skim = mm(0.5);
    bore.stock = mm(2);
    bore.overhang = mm(3);
    return bore;
}

Build prepared(const WornBore& bore) {
    return skim_and_size(bore, survey(bore.worn, bore.length));
}

/// What a bore is refused with; empty: it is not.
std::vector<std::string> refusal(const WornBore& bore) {
    try {
        prepared(bore);
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        return in_figures(faulty.faults());
    }
    return {};
}

} // namespace

// Worked by hand from sections 2 and 3 of the computation: r_max = 46.7 + 0.4, r_s = 47.1 + 0.5 = 47.6 mm,
// r_f = 45, r_t = 43, H = 4.6, L_w = 106, wall = 90 - 47.6.
TEST_CASE("a skimmed bore is prepared for welding") {
    const Build build = prepared(arm_root());
    CHECK(build.skimmed);
    CHECK_THAT(as_mm(build.skim_radius), WithinAbs(47.6, 1e-12));
    CHECK_THAT(as_mm3(build.skim_volume), WithinRel(pi * 100 * (47.6 * 47.6 - 46.7 * 46.7), 1e-12));
    CHECK(build.mean_radius == build.skim_radius);
    CHECK_THAT(as_mm(build.finish_radius), WithinAbs(45, 1e-12));
    CHECK_THAT(as_mm(build.weld_to_radius), WithinAbs(43, 1e-12));
    CHECK_THAT(as_mm(build.thickness), WithinAbs(4.6, 1e-12));
    CHECK_THAT(as_mm(build.welded_length), WithinAbs(106, 1e-12));
    CHECK_THAT(as_mm3(build.ring_volume), WithinRel(pi * 106 * (47.6 * 47.6 - 43.0 * 43.0), 1e-12));
    CHECK_THAT(as_mm(build.finished_weld), WithinAbs(2.6, 1e-12));
    REQUIRE(build.wall);
    CHECK_THAT(as_mm(*build.wall), WithinAbs(42.4, 1e-12));
}

TEST_CASE("a skim of nothing bores to the deepest wear") {
    WornBore bore = arm_root();
    bore.skim = Length();
    const Build build = prepared(bore);
    CHECK(build.skimmed);
    CHECK_THAT(as_mm(build.skim_radius), WithinAbs(47.1, 1e-12));
    CHECK_THAT(as_mm3(build.skim_volume), WithinRel(pi * 100 * (47.1 * 47.1 - 46.7 * 46.7), 1e-11));
}

// Section 2, "none": r_s is r_max for build and wall, nothing is skimmed, and metal is counted from the
// radius whose cylinder holds the worn volume: 46.7 mm here. The thinnest weld lies opposite the offset.
TEST_CASE("without a skim metal is counted from the mean radius") {
    WornBore bore = arm_root();
    bore.skim.reset();
    const Build build = prepared(bore);
    CHECK_FALSE(build.skimmed);
    CHECK_THAT(as_mm(build.skim_radius), WithinAbs(47.1, 1e-12));
    CHECK(build.skim_volume == Volume());
    CHECK_THAT(as_mm(build.mean_radius), WithinAbs(46.7, 1e-12));
    CHECK_THAT(as_mm(build.thickness), WithinAbs(4.1, 1e-12));
    CHECK_THAT(as_mm3(build.ring_volume), WithinRel(pi * 106 * (46.7 * 46.7 - 43.0 * 43.0), 1e-12));
    CHECK_THAT(as_mm(build.finished_weld), WithinAbs(1.3, 1e-12));
    CHECK_THAT(build.finished_weld_clock.value(), WithinRel(pi, 1e-15));
    CHECK_THAT(as_mm(*build.wall), WithinAbs(42.9, 1e-12));
}

TEST_CASE("without a skim the finished weld is negative where parent metal stands proud") {
    WornBore bore = arm_root();
    bore.skim.reset();
    bore.worn = Worn{mm(91), mm(0.8), Angle()};
    CHECK_THAT(as_mm(prepared(bore).finished_weld), WithinAbs(-0.3, 1e-12));
}

TEST_CASE("without the boss there is no wall") {
    WornBore bore = arm_root();
    bore.boss_diameter.reset();
    CHECK_FALSE(prepared(bore).wall);
}

TEST_CASE("the least wall is 6 mm or a fifth of the finish radius") {
    CHECK_THAT(as_mm(least_wall(mm(20))), WithinAbs(6, 1e-12));
    CHECK_THAT(as_mm(least_wall(mm(30))), WithinAbs(6, 1e-12));
    CHECK_THAT(as_mm(least_wall(mm(45))), WithinAbs(9, 1e-12));
}

TEST_CASE("a bore that cleans up at its finish size is refused") {
    WornBore bore = arm_root();
    bore.worn = Worn{mm(88.6), Length(), Angle()};
    CHECK(refusal(bore) == Lines{"bores[0].worn: 89.6 3.528 90.0 3.543"});
}

TEST_CASE("a bore that cleans up exactly at its finish size is refused too, and just over it is not") {
    WornBore bore = arm_root();
    bore.skim = Length();
    bore.worn = Worn{mm(90), Length(), Angle()};
    CHECK(refusal(bore) == Lines{"bores[0].worn: 90.0 3.543 90.0 3.543"});
    bore.worn = Worn{mm(90.001), Length(), Angle()};
    CHECK(refusal(bore).empty());
}

TEST_CASE("a skim that leaves no wall is refused") {
    WornBore bore = arm_root();
    bore.boss_diameter = mm(95);
    CHECK(refusal(bore) == Lines{"bores[0].boss_diameter: 95.2 3.748 95.0 3.740"});
    bore.boss_diameter = mm(95.21);
    CHECK(refusal(bore).empty());
}

TEST_CASE("both refusals of a bore come at once") {
    WornBore bore = arm_root();
    bore.finish_diameter = mm(96);
    bore.boss_diameter = mm(95);
    CHECK(refusal(bore) ==
          Lines{"bores[0].worn: 95.2 3.748 96.0 3.780", "bores[0].boss_diameter: 95.2 3.748 95.0 3.740"});
}

TEST_CASE("a curve that passes the target axis is refused before anything is made of it") {
    const WornBore bore = arm_root();
    Survey found = survey(bore.worn, bore.length);
    found.smallest.radius = Length();
    try {
        skim_and_size(bore, found);
        FAIL("not refused");
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        CHECK(std::string(faulty.what()) ==
              "bores[0].worn: has readings of arm root so far apart that a smooth curve through them passes "
              "the target axis; check the readings for a slip");
    }
}
