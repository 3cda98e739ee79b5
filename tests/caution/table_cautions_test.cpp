#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include <ringfill/caution/table_cautions.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// The fields of a job that cautions hang on, each as JSON; an empty text leaves the field out.
using Fields = std::map<std::string, std::string>;

std::string members(const Fields& fields, std::string_view group) {
    std::string text;
    for (const auto& [name, value] : fields)
        if (name.starts_with(group) && !value.empty())
            text += fmt::format("{}\"{}\": {}", text.empty() ? "" : ", ", name.substr(group.size()), value);
    return text;
}

/// A job that states everything the cautions ask for, so that the answer to each is yes or no.
Fields stated() {
    return {{"site.ambient", "\"15 degC\""},
            {"site.wet", "false"},
            {"site.indoors", "true"},
            {"site.enclosed", "false"},
            {"site.room_volume", "\"1000 m3\""},
            {"site.ceiling", "\"8 m\""},
            {"site.near", "[]"},
            {"site.coating", "\"none\""},
            {"site.residue", "[]"},
            {"site.crew", "[]"},
            {"procedure.filler", "\"steel/ER70S-6\""},
            {"procedure.wire", "\"1.0 mm\""},
            {"procedure.gas", "\"M21\""},
            {"procedure.wire_feed", "\"6.5 m/min\""},
            {"procedure.current", "\"150 A\""},
            {"procedure.voltage", "\"18.5 V\""},
            {"procedure.travel", "\"320 mm/min\""},
            {"bore.name", "\"lug\""},
            {"bore.axis", "\"horizontal\""},
            {"bore.base", "\"steel/S355J2\""},
            {"bore.finish_diameter", "90"},
            {"bore.length", "100"},
            {"bore.boss_diameter", "180"},
            {"bore.worn", R"({ "diameter": 93 })"},
            {"bore.procedure", "\"main\""},
            {"heater.kind", "\"propane\""},
            {"heater.power", "\"30 kW\""}};
}

/// The product's tables, and a metal and wires that hold nothing the fume rows look for.
const Shop& shop_of_tests() {
    static const Shop ready =
        read_shop(Shelf{{RINGFILL_TABLES, std::string(RINGFILL_ROOT) + "/tests/caution/tables"}},
                  {RINGFILL_PLUGIN_FOLDER});
    return ready;
}

Plan planned(const Fields& fields) {
    return plan(job_from(fmt::format(
                    R"({{ "format": "ringfill-job/1", "title": "t", "units": "mm", "site": {{ {} }},
                          "procedures": {{ "main": {{ {} }} }}, "bores": [ {{ {} }} ], "heater": {{ {} }},
                          "torch": {{ "smallest_bore": "20 mm", "reach": "900 mm" }}, "reserve": "10 %" }})",
                    members(fields, "site."), members(fields, "procedure."), members(fields, "bore."),
                    members(fields, "heater."))),
                shop_of_tests());
}

/// How a row of the table stands in a plan: "yes", "unknown", or "no" when it is left out.
std::string answer(const Plan& plan, const CautionRow& row) {
    // Rows are told by their texts up to the first brace, which differ from one another.
    const std::string begins = row.text.substr(0, row.text.find('{'));
    std::string found = "no";
    for (const Caution& caution : plan.cautions)
        if (caution.text.starts_with(begins)) {
            CHECK(found == "no");
            found = caution.applies;
        }
    return found;
}

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
      {{"bore.base", "\"stainless/304\""}, {"bore.length", "400"}, {"bore.worn", R"({ "diameter": 91 })"}}}},
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
        if (row.triggers.front().circumstance == Circumstance::always)
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

TEST_CASE("what the job does not say is unknown, never no, and names its field") {
    const std::map<std::string, std::vector<std::string>> left_open = {
        {"site.near",
         {"closed cavity", "tyre", "hydraulics", "tank", "control units", "close control units", "bearing",
          "crane"}},
        {"site.coating", {"coating", "zinc"}},
        {"site.residue", {"grease", "solvent", "dust"}},
        {"site.wet", {"wet"}},
        {"site.indoors", {"indoors", "outdoors"}},
        {"site.enclosed", {"enclosed", "gas displaces air"}},
        {"site.room_volume", {"low room"}},
        {"site.ceiling", {"low room"}},
        {"site.ambient", {"heat stress", "cold stress"}},
        {"site.crew", {"implant", "new to heat"}},
    };
    for (const auto& [field, names] : left_open) {
        Fields fields = stated();
        fields[field] = "";
        const Plan plan = planned(fields);
        for (const CautionRow& row : shop_of_tests().cautions.rows) {
            const bool open = std::find(names.begin(), names.end(), row.name) != names.end();
            CAPTURE(field, row.name);
            if (open)
                CHECK(answer(plan, row) == "unknown");
        }
        for (const Caution& caution : plan.cautions)
            if (caution.applies == "unknown") {
                CHECK_FALSE(caution.check.empty());
                CHECK(caution.field == field);
                CHECK(caution.because == "the job does not say: " + caution.field);
            }
    }
    Fields fields = stated();
    fields["bore.holes"] = R"([{ "diameter": 10, "depth": 50, "clock": "90 deg" }])";
    fields["bore.base"] = "\"stainless/304\"";
    fields["bore.boss_diameter"] = "";
    const Plan plan = planned(fields);
    CHECK(std::any_of(plan.cautions.begin(), plan.cautions.end(), [](const Caution& one) {
        return one.applies == "unknown" && one.text.starts_with("Mark the boss as hot") &&
               one.field == "bores.boss_diameter, procedures.current and voltage";
    }));
    CHECK(std::any_of(plan.cautions.begin(), plan.cautions.end(), [](const Caution& one) {
        return one.applies == "unknown" && one.field == "bores.holes.other_end";
    }));
}

TEST_CASE("a job that says everything leaves nothing open") {
    const Plan plan = planned(stated());
    CHECK(std::all_of(plan.cautions.begin(), plan.cautions.end(),
                      [](const Caution& one) { return one.applies == "yes"; }));
}

TEST_CASE("cautions stand by the time of the work, those that are left open last") {
    Fields fields = stated();
    fields["site.near"] = "";
    const Plan plan = planned(fields);
    const auto rank = [](const Caution& one) {
        return one.applies != "yes" ? 3 : one.when == "before" ? 0 : one.when == "during" ? 1 : 2;
    };
    CHECK(std::is_sorted(plan.cautions.begin(), plan.cautions.end(),
                         [&](const Caution& one, const Caution& other) { return rank(one) < rank(other); }));
    for (const Caution& caution : plan.cautions) {
        CAPTURE(caution.source);
        CHECK(plan.sources.contains(caution.source));
        for (const std::string& key : caution.more_sources)
            CHECK(plan.sources.contains(key));
    }
}
