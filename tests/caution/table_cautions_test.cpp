#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>

#include "caution/job_fields.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// One field and two of its values: with the first the caution applies, with the second it does not.
struct Pair {
    std::string field;
    std::string with;
    std::string without;
    Fields others = {}; ///< that both jobs have beside stated()
};

const std::map<std::string, Pair> pairs = {
    {"closed cavity", {"site.near", "[\"closed_cavity\"]", "[\"tyre\"]"}},
    {"plugged passage",
     {"bore.holes", R"([{ "diameter": 10, "depth": 50, "clock": "90 deg", "other_end": "fitting" }])",
      R"([{ "diameter": 10, "depth": 50, "clock": "90 deg", "other_end": "open" }])"}},
    {"tyre", {"site.near", "[\"tyre\"]", "[]"}},
    {"hydraulics", {"site.near", "[\"hydraulics\"]", "[\"bearing\"]"}},
    {"tank", {"site.near", "[\"fuel\"]", "[]"}},
    {"coating", {"site.coating", "\"paint\"", "\"none\""}},
    {"zinc", {"site.coating", "\"zinc\"", "\"paint\""}},
    {"grease", {"site.residue", "[\"oil\"]", "[\"dust\"]"}},
    {"solvent", {"site.residue", "[\"solvent\"]", "[\"grease\"]"}},
    {"dust", {"site.residue", "[\"dust\"]", "[]"}},
    {"control units", {"site.near", "[\"battery\"]", "[]"}},
    {"close control units", {"site.near", "[\"battery\"]", "[\"fuel\"]"}},
    {"bearing", {"site.near", "[\"bearing\"]", "[\"tyre\"]"}},
    {"crane", {"site.near", "[\"crane\"]", "[]"}},
    {"low room", {"site.room_volume", "\"9999 ft3\"", "\"10001 ft3\""}},
    {"indoors", {"site.indoors", "true", "false"}},
    {"outdoors", {"site.indoors", "false", "true"}},
    {"enclosed", {"site.enclosed", "true", "false"}},
    {"gas displaces air", {"site.enclosed", "true", "false"}},
    {"wet", {"site.wet", "true", "false"}},
    {"manganese fume",
     {"bore.base",
      "\"steel/S355J2\"",
      "\"test_bronze/bell\"",
      {{"procedure.filler", "\"test_bronze/gassed\""}, {"procedure.gas", "\"M12\""}}}},
    {"copper fume",
     {"bore.base",
      "\"test_bronze/bell\"",
      "\"test_bronze/tin\"",
      {{"procedure.filler", "\"test_bronze/gassed\""}, {"procedure.gas", "\"M12\""}}}},
    {"gas cylinders",
     {"procedure.gas", "\"M12\"", "\"none\"", {{"procedure.filler", "\"test_bronze/gasless\""}}}},
    {"hot surface",
     {"bore.boss_diameter",
      "180",
      "2500",
      {{"site.ambient", "\"20 degC\""}, // no warming to hand-warm
       {"bore.base", "\"stainless/304\""},
       {"bore.length", "400"},
       {"bore.worn", R"({ "diameter": 91 })"}}}},
    {"chromium fume", {"bore.base", "\"stainless/304\"", "\"steel/S355J2\""}},
    {"nickel fume", {"bore.base", "\"stainless/304\"", "\"steel/S355J2\""}},
    {"flux fume",
     {"procedure.filler", "\"steel/E71T-1\"", "\"steel/ER70S-6\"", {{"procedure.wire", "\"1.2 mm\""}}}},
    {"wire shade under 60 A", {"procedure.current", "\"59 A\"", "\"60 A\""}},
    {"wire shade to 160 A", {"procedure.current", "\"159 A\"", "\"160 A\""}},
    {"wire shade to 250 A", {"procedure.current", "\"160 A\"", "\"159 A\""}},
    {"wire shade from 250 A", {"procedure.current", "\"250 A\"", "\"249 A\""}},
    {"electrode shade under 60 A",
     {"procedure.current",
      "\"59 A\"",
      "\"60 A\"",
      {{"procedure.filler", "\"steel/E7018-H8\""},
       {"procedure.wire", "\"3.2 mm\""},
       {"procedure.gas", ""},
       {"procedure.wire_feed", ""}}}},
    {"electrode shade to 160 A",
     {"procedure.current",
      "\"159 A\"",
      "\"160 A\"",
      {{"procedure.filler", "\"steel/E7018-H8\""},
       {"procedure.wire", "\"3.2 mm\""},
       {"procedure.gas", ""},
       {"procedure.wire_feed", ""}}}},
    {"electrode shade to 250 A",
     {"procedure.current",
      "\"160 A\"",
      "\"159 A\"",
      {{"procedure.filler", "\"steel/E7018-H8\""},
       {"procedure.wire", "\"3.2 mm\""},
       {"procedure.gas", ""},
       {"procedure.wire_feed", ""}}}},
    {"electrode shade from 250 A",
     {"procedure.current",
      "\"250 A\"",
      "\"249 A\"",
      {{"procedure.filler", "\"steel/E7018-H8\""},
       {"procedure.wire", "\"3.2 mm\""},
       {"procedure.gas", ""},
       {"procedure.wire_feed", ""}}}},
    {"tungsten shade to 150 A",
     {"procedure.current",
      "\"149 A\"",
      "\"150 A\"",
      {{"procedure.filler", "\"steel/ER70S-2\""},
       {"procedure.wire", "\"2.4 mm\""},
       {"procedure.gas", "\"I1\""},
       {"procedure.wire_feed", ""},
       {"procedure.deposition_rate", "\"0.9 kg/h\""}}}},
    {"tungsten shade from 150 A",
     {"procedure.current",
      "\"150 A\"",
      "\"149 A\"",
      {{"procedure.filler", "\"steel/ER70S-2\""},
       {"procedure.wire", "\"2.4 mm\""},
       {"procedure.gas", "\"I1\""},
       {"procedure.wire_feed", ""},
       {"procedure.deposition_rate", "\"0.9 kg/h\""}}}},
    {"electric heater", {"heater.kind", "\"resistance\"", "\"propane\""}},
    {"plate rules", {"bore.base", "\"steel/C45\"", "\"stainless/304\""}},
    {"delayed cracks", {"bore.base", "\"steel/C45\"", "\"stainless/304\""}},
    {"fuel cylinders", {"heater.kind", "\"propane\"", "\"resistance\""}},
    {"oxygen", {"heater.kind", "\"acetylene\"", "\"propane\""}},
    {"acetylene", {"heater.kind", "\"acetylene\"", "\"propane\""}},
    {"propane", {"heater.kind", "\"propane\"", "\"acetylene\""}},
    {"implant", {"site.crew", "[\"implant\"]", "[\"new_to_heat\"]"}},
    {"new to heat", {"site.crew", "[\"new_to_heat\"]", "[]"}},
    {"heat stress", {"site.ambient", "\"26 degC\"", "\"25.9 degC\""}},
    {"cold stress", {"site.ambient", "\"4.9 degC\"", "\"5 degC\""}},
};

} // namespace

TEST_CASE("each caution that is not for every job: one field makes it apply, or not") {
    for (const CautionRow& row : shop_of_tests().cautions.rows) {
        if (row.triggers.front().circumstance == circumstance("always"))
            continue;
        CAPTURE(row.name);
        const auto pair = pairs.find(row.name);
        REQUIRE(pair != pairs.end());
        Fields fields = stated();
        for (const auto& [name, value] : pair->second.others)
            fields[name] = value;
        fields[pair->second.field] = pair->second.with;
        CHECK(answer(planned(fields), row) == "yes");
        fields[pair->second.field] = pair->second.without;
        CHECK(answer(planned(fields), row) == "no");
    }
}
