#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/units/factor.hpp>

#include "caution/told.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Length mm(double value) {
    return millimetres(value);
}

WornBore arm_root() {
    WornBore bore;
    bore.name = "arm root";
    return bore;
}

/// Eight radii at each station: nothing to say.
Survey sound_survey() {
    Survey survey;
    survey.readings = 8;
    return survey;
}

/// A bore of 90 mm with 2.6 mm of finished weld and a wall of 42.4 mm: nothing to say.
Build sound_build() {
    Build build;
    build.finish_radius = mm(45);
    build.finished_weld = mm(2.6);
    build.wall = mm(42.4);
    return build;
}

Lines cautions(const Survey& survey, const Build& build, const WornBore& bore = arm_root(),
               UnitSystem units = UnitSystem::metric) {
    BorePlan plan;
    plan.survey = survey;
    plan.build = build;
    return told_by(survey_rules, bore, plan, units);
}

} // namespace

TEST_CASE("a sound bore has no caution") {
    CHECK(cautions(sound_survey(), sound_build()).empty());
}

TEST_CASE("fewer than eight readings are a caution and eight are not") {
    Survey survey = sound_survey();
    survey.readings = 7;
    CHECK(cautions(survey, sound_build()) == Lines{"arm root | before | yes | Measure at 8 clock positions "
                                                   "or more: an oval between the readings is not seen. "
                                                   "| 7 readings round the bore | practice"});
    survey.readings = 3;
    CHECK(cautions(survey, sound_build()) == Lines{"arm root | before | yes | Measure at 8 clock positions "
                                                   "or more: an oval between the readings is not seen. "
                                                   "| 3 readings round the bore | practice"});
    survey.readings = 8;
    CHECK(cautions(survey, sound_build()).empty());
}

TEST_CASE("one diameter for the whole bore is a caution") {
    CHECK(cautions(Survey(), sound_build()) == Lines{"arm root | before | yes | Measure at 8 clock positions "
                                                     "or more: one diameter does not show an oval. | one "
                                                     "diameter stands for the whole bore | practice"});
}

TEST_CASE("two-point readings are a caution however many they are") {
    Survey survey = sound_survey();
    survey.readings = 360;
    survey.two_point = true;
    CHECK(cautions(survey, sound_build()) ==
          Lines{"arm root | before | yes | Check for three-lobed wear with a three-point gauge or radii from "
                "the axis: "
                "two-point readings never show it. | the survey is of two-point diameters | practice"});
}

TEST_CASE("a finished weld under 1.5 mm is a caution and 1.5 mm is not") {
    Build build = sound_build();
    build.finished_weld = mm(1.5);
    CHECK(cautions(sound_survey(), build).empty());
    build.finished_weld = mm(1.4);
    CHECK(cautions(sound_survey(), build) == Lines{"arm root | before | yes | Skim deeper: the tool would "
                                                   "work in the fused line. | only 1.4 mm of weld per "
                                                   "side is left after boring, under 1.5 mm | practice"});
    build.finished_weld = mm(1.4999);
    CHECK(cautions(sound_survey(), build).size() == 1);
}

TEST_CASE("a thin finished weld is told in inches to those who read them") {
    Build build = sound_build();
    build.finished_weld = mm(1.27);
    CHECK(cautions(sound_survey(), build, arm_root(), UnitSystem::inch) ==
          Lines{"arm root | before | yes | Skim deeper: the tool would work in the fused line. | only 0.050 "
                "in of weld per "
                "side is left after boring, under 0.059 in | practice"});
}

TEST_CASE("without a skim the surface is a caution and a thin weld says where") {
    const std::string uncleaned =
        "arm root | before | yes | Grind or skim to sound, bright metal before welding: grease, "
        "rust and hammered skin make a porous weld. | the job welds on the surface as it is | "
        "practice";
    Build build = sound_build();
    build.skimmed = false;
    build.finished_weld_clock = in_si<Angle>(180 * factor::degree);
    CHECK(cautions(sound_survey(), build) == Lines{uncleaned});
    build.finished_weld = mm(1.4);
    CHECK(cautions(sound_survey(), build) ==
          Lines{"arm root | before | yes | Skim deeper: the tool would work in the fused line. | only 1.4 mm "
                "of weld per "
                "side is left after boring at 180°, under 1.5 mm | practice",
                uncleaned});
    build.finished_weld = Length();
    CHECK(cautions(sound_survey(), build) ==
          Lines{"arm root | before | yes | Skim deeper: the tool would work in the fused line. | only 0.0 mm "
                "of weld per "
                "side is left after boring at 180°, under 1.5 mm | practice",
                uncleaned});
    build.finished_weld = mm(-0.3);
    CHECK(cautions(sound_survey(), build) ==
          Lines{"arm root | before | yes | Skim the bore first: after boring the tool will meet parent "
                "metal. | the worn "
                "surface stands 0.3 mm inside the finish diameter at 180° | practice",
                uncleaned});
}

// Section 2: under max(6 mm, r_f/5), which is 9 mm for a bore of 90 and 6 mm for one of 60 or less.
TEST_CASE("a wall under its least is a caution and the least itself is not") {
    Build build = sound_build();
    build.wall = least_wall(build.finish_radius);
    CHECK(cautions(sound_survey(), build).empty());
    build.wall = mm(8.9);
    CHECK(cautions(sound_survey(), build) == Lines{"arm root | before | yes | Have the thin wall judged "
                                                   "before welding: it may burn through or warp. Back it "
                                                   "up, and lay less heat at a time. | 8.9 mm of wall is "
                                                   "left after the skim, under 9.0 mm | practice"});
    build.finish_radius = mm(25);
    build.wall = mm(6);
    CHECK(cautions(sound_survey(), build).empty());
    build.wall = mm(5.9);
    CHECK(cautions(sound_survey(), build) == Lines{"arm root | before | yes | Have the thin wall judged "
                                                   "before welding: it may burn through or warp. Back it "
                                                   "up, and lay less heat at a time. | 5.9 mm of wall is "
                                                   "left after the skim, under 6.0 mm | practice"});
    build.wall.reset();
    CHECK(cautions(sound_survey(), build).empty());
}

// Worked by hand: 2.6 mm of finished weld on a bore of 90 mm reach to 95.2 mm.
TEST_CASE("a groove deeper than the finished weld is a caution and one as deep is not") {
    WornBore bore = arm_root();
    bore.grooves = {{mm(95.19), mm(4)}, {mm(92), mm(4)}};
    CHECK(cautions(sound_survey(), sound_build(), bore).empty());
    bore.grooves = {{mm(95.21), mm(4)}, {mm(92), mm(4)}, {mm(97), mm(3)}};
    CHECK(cautions(sound_survey(), sound_build(), bore) ==
          Lines{"arm root | before | yes | Expect the re-cut groove to run in the fused line or in parent "
                "metal. | its floor "
                "at 95.2 mm lies deeper than the 2.6 mm of finished weld per side | practice",
                "arm root | before | yes | Expect the re-cut groove to run in the fused line or in parent "
                "metal. | its floor "
                "at 97.0 mm lies deeper than the 2.6 mm of finished weld per side | practice"});
}

TEST_CASE("readings far from round or far over the finish size are doubted") {
    const auto doubts = [](double worn_mm, double offset_mm) {
        WornBore bore;
        bore.name = "pin";
        bore.finish_diameter = millimetres(80);
        bore.length = millimetres(90);
        bore.skim = millimetres(0.5);
        bore.stock = millimetres(2);
        bore.worn = Worn{millimetres(worn_mm), millimetres(offset_mm), Angle()};
        const Survey found = survey(bore.worn, bore.length);
        const Lines lines = cautions(found, skim_and_size(bore, found), bore);
        return static_cast<int>(std::count_if(lines.begin(), lines.end(), [](const std::string& line) {
            return line.find(" | Check the readings and their units: a figure may be mistyped. | ") !=
                   std::string::npos;
        }));
    };
    CHECK(doubts(99.9, 0) == 0);  // 9.95 mm over the radius of 40 mm, under a quarter
    CHECK(doubts(100.2, 0) == 1); // 10.1 mm
    CHECK(doubts(84, 1.99) == 0); // 3.98 mm of spread, under a tenth
    CHECK(doubts(84, 2.01) == 1);
    CHECK(doubts(82.6 * 25.4, 0) == 1); // millimetres taken for inches
}
