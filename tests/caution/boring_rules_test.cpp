#include <catch2/catch.hpp>

#include <ringfill/units/metric.hpp>

#include "caution/told.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

struct Sample {
    WornBore bore;
    Build build;
    BoringPlan boring;

    Sample() {
        bore.name = "drum side";
        bore.finish_diameter = millimetres(90);
        bore.grooves = {{millimetres(94), millimetres(4)}};
        build.finished_weld = millimetres(4);
        boring.settings.cutting_speed = {in_si<Speed>(1), "practice"};
        boring.bar.used = in_si<Turning>(3);
        boring.final_diameter = millimetres(90);
        boring.valley_radius = millimetres(44);
        boring.expansion = {12e-6, "practice"};
    }
    BorePlan plan() const {
        BorePlan planned;
        planned.name = bore.name;
        planned.build = build;
        planned.boring = boring;
        return planned;
    }
    Lines told_of(UnitSystem units = UnitSystem::metric) const {
        return told_by(boring_rules, bore, plan(), units);
    }
};

} // namespace

TEST_CASE("a bore that can be cut as planned has no caution") {
    CHECK(Sample().told_of().empty());
}

TEST_CASE("a bar whose lowest speed is too fast is a caution with both speeds") {
    Sample sample;
    sample.boring.bar.used = in_si<Turning>(5);
    sample.boring.bar.too_fast = true;
    CHECK(
        sample.told_of() ==
        Lines{"drum side | before | yes | Expect the bar to wear its edges out fast: its lowest speed is too "
              "fast for this bore. | 300 rev/min cut at 85 m/min, asked is 60 m/min | practice"});
    CHECK(sample.told_of(UnitSystem::inch).front().find("278 ft/min, asked is 197 ft/min") !=
          std::string::npos);
}

TEST_CASE("a deposit too hard for a bar is ground, with its hardness and the limit") {
    Sample sample;
    sample.boring.settings.deposit.too_hard = Sourced<double>{595, "own"};
    sample.boring.settings.bored_up_to_HV = {446, "45-HRC"};
    CHECK(
        sample.told_of() ==
        Lines{"drum side | before | yes | Grind the weld to size: it is too hard to be bored on a bar. Cuts "
              "and times here are those of boring. |  lays about 595 HV, over 446 HV, 45 HRC | 45-HRC"});
}

TEST_CASE("a feed of the job that rubs in metal it hardens is a caution") {
    Sample sample;
    sample.boring.settings.deposit.group = DepositGroup::nickel;
    sample.boring.settings.least_feed = {millimetres(0.12), "practice"};
    sample.boring.settings.feed = {millimetres(0.12), "job"};
    CHECK(sample.told_of().empty());
    sample.boring.settings.feed = {millimetres(0.08), "job"};
    CHECK(sample.told_of() ==
          Lines{"drum side | before | yes | Feed at least 0.12 mm: the edge of a finer feed rubs in the skin "
                "that it has hardened. | the weld is a nickel deposit and the feed 0.08 mm | practice"});
}

TEST_CASE("valleys that do not lie inside the finish are a caution") {
    Sample sample;
    sample.boring.valley_radius = millimetres(44.999);
    CHECK(sample.told_of().empty());
    sample.boring.valley_radius = millimetres(45.2);
    CHECK(
        sample.told_of() ==
        Lines{"drum side | before | yes | Weld another layer or leave more stock: the bore will not clean up "
              "at its finish size. | the floors of the valleys lie at up to 90.4 mm, the finish is 90.0 mm "
              "| practice"});
}

// Under nothing is told by the survey's rule, which names groove and weld.
TEST_CASE("little weld under a groove is a caution") {
    Sample sample;
    const auto with_left = [&](double left_mm) {
        sample.boring.grooves = {{0, millimetres(2), millimetres(left_mm)}};
        return sample.told_of();
    };
    CHECK(with_left(1.5).empty());
    CHECK(with_left(1.2) ==
          Lines{"drum side | before | yes | Expect the re-cut groove to run close to the fused line. | only "
                "1.2 mm of weld is left under its floor at 94.0 mm, under 1.5 mm | practice"});
    CHECK(with_left(-0.1).empty());
}

TEST_CASE("finishing while hot is a caution of the job with the bore that grows most") {
    Sample one;
    Sample other;
    other.boring.expansion.value = 16e-6;
    one.bore.name = "lug";
    other.bore.name = "link";
    CautionList cautions;
    hot_finish_rules(cautions, {one.plan(), other.plan()}, shop().cutting);
    REQUIRE(cautions.found.size() == 1);
    CHECK(
        told(cautions.found[0]) ==
        "the job | after | yes | Rough under 60 °C; finish and measure under 30 °C, or add the growth to the "
        "gauge reading. | link is 0.014 mm large for each 10 K over 20 °C | practice");
    CautionList none;
    hot_finish_rules(none, {}, shop().cutting);
    CHECK(none.found.empty());
}
