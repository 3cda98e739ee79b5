#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>

#include "caution/job_fields.hpp"

using namespace ringfill;
using namespace ringfill::testing;

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
            if (caution.applies == Applies::unknown) {
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
        return one.applies == Applies::unknown && one.text.starts_with("Mark the boss as hot") &&
               one.field == "bores.boss_diameter, procedures.current and voltage";
    }));
    CHECK(std::any_of(plan.cautions.begin(), plan.cautions.end(), [](const Caution& one) {
        return one.applies == Applies::unknown && one.field == "bores.holes.other_end";
    }));
}

TEST_CASE("a job that says everything leaves nothing open") {
    const Plan plan = planned(stated());
    CHECK(std::all_of(plan.cautions.begin(), plan.cautions.end(),
                      [](const Caution& one) { return one.applies == Applies::yes; }));
}

TEST_CASE("cautions stand by the time of the work, those that are left open last") {
    Fields fields = stated();
    fields["site.near"] = "";
    const Plan plan = planned(fields);
    const auto rank = [](const Caution& one) {
        return one.applies != Applies::yes ? 3
               : one.when == When::before  ? 0
               : one.when == When::during  ? 1
                                           : 2;
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
