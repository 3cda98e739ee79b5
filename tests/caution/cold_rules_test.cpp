#include <catch2/catch.hpp>

#include <ringfill/units/metric.hpp>

#include "caution/told.hpp"
#include "fahrenheit.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Lines told_of(const Site& site, UnitSystem units = UnitSystem::metric,
              const std::vector<std::string>& in_doubt = {}, bool all_in_doubt = false) {
    CautionList cautions{units, Matter::cracking};
    cold_rules(cautions, site, in_doubt, all_in_doubt);
    return told(cautions.found);
}

Lines at(double degrees, bool wet = false) {
    Site site;
    site.ambient = celsius(degrees);
    site.wet = wet;
    return told_of(site);
}

const std::string warm =
    "the job | before | yes | Warm every boss to 20 °C at least before the first arc and hold "
    "it there, even where no preheat is asked for. | the job says ";
const std::string dry = "the job | before | yes | Warm the metal until it is dry and hand-warm: damp steel "
                        "cracks and makes pores. | the job says ";

} // namespace

TEST_CASE("cold and wet ask for warmth before the first arc") {
    CHECK(told_of(Site{}).empty());
    CHECK(at(5).empty());
    CHECK(at(4.9) == Lines{dry + "5 °C at the site | practice"});
    CHECK(at(0) == Lines{dry + "0 °C at the site | practice"});
    CHECK(at(-0.1) == Lines{warm + "0 °C at the site | D1.1-ambient", dry + "0 °C at the site | practice"});
    CHECK(at(-18).size() == 2);
    CHECK(at(20, true) == Lines{dry + "it is wet | practice"});
}

TEST_CASE("in deep frost and wet all three are told, none hides another") {
    CHECK(
        at(-18.1, true) ==
        Lines{"the job | before | yes | Do not weld in this cold: put up a shelter and heat it first, until "
              "it is over -18 °C at the weld. | the job says -18 °C at the site | D1.1-ambient",
              warm + "-18 °C at the site | D1.1-ambient", dry + "it is wet | practice"});
}

TEST_CASE("in inches the cold is told in degrees Fahrenheit") {
    Site site;
    site.ambient = fahrenheit(-5);
    const Lines lines = told_of(site, UnitSystem::inch);
    REQUIRE(lines.size() == 3);
    CHECK(lines[0] ==
          "the job | before | yes | Do not weld in this cold: put up a shelter and heat it first, "
          "until it is over 0 °F at the weld. | the job says -5 °F at the site | D1.1-ambient");
    CHECK(lines[1] == "the job | before | yes | Warm every boss to 70 °F at least before the first arc and "
                      "hold it there, even where no preheat is asked for. | the job says -5 °F at the site | "
                      "D1.1-ambient");
}

TEST_CASE("metal in doubt is neither warmed nor dried with a flame") {
    Site site;
    site.ambient = celsius(-1);
    CHECK(told_of(site, UnitSystem::metric, {"pin"}, false) ==
          Lines{"the job | before | yes | Warm every boss to 20 °C at least before the first arc and hold it "
                "there, "
                "even where no preheat is asked for. Not pin: its metal is identified first. | the job says "
                "-1 °C "
                "at the site | D1.1-ambient",
                "the job | before | yes | Warm the metal until it is dry and hand-warm: damp steel "
                "cracks and "
                "makes pores. Not pin: its metal is identified first. | the job says -1 °C at the site | "
                "practice"});
    CHECK(told_of(site, UnitSystem::metric, {"pin"}, true).empty());
}
