#include <catch2/catch.hpp>

#include <regex>
#include <set>

#include <ringfill/report/text/cautions_text.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/cautions.hpp>

#include "report/plan_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const Style plain{};

/// A plan with a heat balance, and so with a day.
Plan planned_with_heat() {
    Job job = job_from(small_job("\"boss_diameter\": \"180 mm\","));
    job.procedures.front().current = in_si<Current>(180);
    job.procedures.front().voltage = in_si<Voltage>(19.5);
    return plan(job, shop());
}

std::string on_one_line(const std::string& text) {
    return std::regex_replace(text, std::regex("\n  +"), " ");
}

} // namespace

TEST_CASE("what the job leaves open is one compact list, a line for each of its fields") {
    std::vector<Caution> cautions(5);
    cautions[0] = {{}, When::before, Matter::life, Applies::yes, "Mind it.", "so", "practice"};
    cautions[1] = {{},  When::before, Matter::life, Applies::unknown, "a",
                   "b", "practice",   "tyres",      "site.near"};
    cautions[2] = {{},  When::during, Matter::life, Applies::unknown, "c",
                   "d", "practice",   "zinc",       "site.coating"};
    cautions[3] = {{{Concern::bore, "lug"}, {Concern::bore, "arm"}},
                   When::during,
                   Matter::life,
                   Applies::unknown,
                   "e",
                   "f",
                   "practice",
                   "bearings",
                   "site.near"};
    cautions[4] = {{},  When::after, Matter::life, Applies::unknown, "g",
                   "h", "practice",  "tyres",      "site.near"};
    CHECK(not_stated(cautions) ==
          std::vector<std::string>{"tyres, lug, arm: bearings (site.near)", "zinc (site.coating)"});
    CHECK(not_stated({cautions[0]}).empty());
}

TEST_CASE(
    "the cautions view tells the watch by the clock, every caution with its source, and how it is known") {
    const Plan plan = planned_with_heat();
    REQUIRE(plan.day);
    const std::string text = on_one_line(cautions_text(plan, plain));
    CHECK_THAT(text,
               Contains("FIRE WATCH A second person, not the one who welds, from the first flame until 1 "
                        "h 00 min after the last heat; the longest of the rule sets known: NFPA51B-2019, "
                        "JCoP-10."));
    CHECK(std::regex_search(
        text, std::regex("day 1 [0-9:]{5} to (day [2-9] )?[0-9:]{5}, then a look at least every 20 min")));
    for (const Caution& caution : plan.cautions)
        if (caution.applies == Applies::yes)
            CHECK_THAT(text, Contains("! " + names_of(caution.about) + ": " + caution.text + " (" +
                                      caution.because + ") [" + caution.source));
    for (const auto& [key, source] : plan.sources)
        CHECK_THAT(text, Contains("- [" + key + "] " + source.title));
    CHECK(text.ends_with("licensed practice prevail over\neverything here.\n"));
}

TEST_CASE("without a day the watch is told by its minutes alone") {
    const Plan plan = plan_of(small_job());
    REQUIRE_FALSE(plan.day);
    CHECK_THAT(on_one_line(cautions_text(plan, plain)),
               Contains("By the clock: not known, because no day is laid out; the notes say why."));
}

TEST_CASE("no caution is said twice, and each is short enough to be read") {
    const Plan plan = plan_of(small_job("\"boss_diameter\": \"180 mm\","));
    std::set<std::string> texts;
    for (const Caution& caution : plan.cautions) {
        CAPTURE(caution.text);
        CHECK(texts.insert(names_of(caution.about) + caution.text).second);
        CHECK(caution.text.size() < 420);
    }
}
