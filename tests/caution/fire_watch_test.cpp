#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

#include <fmt/format.h>

#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/fault/fault.hpp>

#include "document/refused.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Time minutes(double number) {
    return in_si<Time>(number * 60);
}

FireWatch watch_by(std::optional<std::string> asked = std::nullopt) {
    std::vector<Fault> faults;
    const auto rule = watch_rule(shop().cautions.fire_rules, asked, UnitSystem::metric, faults);
    REQUIRE(rule);
    REQUIRE(faults.empty());
    return {*rule, {}, {}};
}

std::string job_with(const std::string& site, const std::string& bores) {
    return fmt::format(
        R"({{ "format": "ringfill-job/1", "title": "t", "units": "mm", "site": {{ {} }},
             "procedures": {{ "main": {{ "filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M21", "wire_feed": "6.5 m/min",
               "current": "150 A", "voltage": "18.5 V", "travel": "320 mm/min" }} }},
             "bores": [ {} ], "torch": {{ "smallest_bore": "40 mm", "reach": "300 mm" }}, "reserve": "10 %" }})",
        site, bores);
}

const std::string lug =
    R"({ "name": "lug", "count": 2, "line": "a", "axis": "horizontal", "base": "steel/C45", "finish_diameter": 90, "length": 100,
         "boss_diameter": 180, "worn": { "diameter": 93 }, "skim": "0.5 mm" })";

} // namespace

// 29 CFR 1910.252(a)(2)(iii): 35 ft and 30 min; NFPA 51B: 30 min to the edition of 2014, 60 min from 2019 on;
// the joint code of practice, 10th edition, 16.15: 60 min, then looks at most 20 min apart for 60 min, 10 m.
TEST_CASE("the fire is watched by the rule set that the job names, or by the longest") {
    const FireWatch longest = watch_by();
    CHECK(longest.after.value == minutes(60));
    CHECK(longest.checks_for->value == minutes(60));
    CHECK(longest.checks_every->value == minutes(20));
    CHECK(longest.clear.value.value() >= 35 * 0.3048 - 1e-9);
    CHECK(longest.rules == std::vector<std::string>{"NFPA51B-2019", "JCoP-10"});
    CHECK(watch_by("longest").after.value == longest.after.value);

    CHECK(watch_by("29CFR1910.252").after.value == minutes(30));
    CHECK_FALSE(watch_by("29CFR1910.252").checks_for);
    CHECK(watch_by("NFPA51B-2014").after.value == minutes(30));
    CHECK(watch_by("NFPA51B-2019").after.value == minutes(60));
    CHECK(watch_by("JCoP-10").clear.value == in_si<Length>(10));
    std::vector<Fault> faults;
    CHECK_FALSE(watch_rule(shop().cautions.fire_rules, "nobody's", UnitSystem::metric, faults));
    CHECK(faults.size() == 1);
}

TEST_CASE("a rule set that asks for less than others is told so, in each of its figures") {
    CHECK(fire_rule_in_words(watch_by()) == "the longest of the rule sets known: NFPA51B-2019, JCoP-10");
    CHECK(fire_rule_in_words(watch_by("29CFR1910.252")) ==
          "the job asks for 29CFR1910.252; others ask for 1 h 00 min, looks for 1 h 00 min after that");
    CHECK(fire_rule_in_words(watch_by("NFPA51B-2019")) ==
          "the job asks for NFPA51B-2019; others ask for looks for 1 h 00 min after that");
    CHECK(fire_rule_in_words(watch_by("JCoP-10")) == "the job asks for JCoP-10; others ask for 10.7 m clear");
}

TEST_CASE("no rule set that is added makes the longest watch shorter") {
    auto rules = shop().cautions.fire_rules;
    std::mt19937 dice(7); // NOLINT(cert-msc32-c, cert-msc51-cpp): the same rules each time
    std::uniform_real_distribution<double> minute(1, 300);
    WatchRule before = watch_by();
    for (int i = 0; i < 200; ++i) {
        FireRule rule{fmt::format("rule {}", i),
                      {minutes(minute(dice)), "own"},
                      {in_si<Length>(minute(dice) / 10), "own"},
                      {},
                      {}};
        if (i % 2 == 0) {
            rule.checks_for = Sourced<Time>{minutes(minute(dice)), "own"};
            rule.checks_every = Sourced<Time>{minutes(minute(dice)), "own"};
        }
        rules.push_back(rule);
        std::vector<Fault> faults;
        const WatchRule after = *watch_rule(rules, std::nullopt, UnitSystem::metric, faults);
        CHECK(after.after.value >= before.after.value);
        CHECK(after.clear.value >= before.clear.value);
        CHECK(after.checks_for->value >= before.checks_for->value);
        CHECK(after.checks_every->value <= before.checks_every->value);
        before = after;
    }
}

TEST_CASE("the watch goes on through pauses that are shorter than its minutes after the last heat") {
    FireWatch watch = watch_by("29CFR1910.252");
    watch = watch_over(
        watch, {{minutes(200), minutes(260)}, {minutes(0), minutes(60)}, {minutes(89), minutes(100)}});
    REQUIRE(watch.periods.size() == 2);
    CHECK(watch.periods[0].from == minutes(0));
    CHECK(watch.periods[0].last_heat == minutes(100));
    CHECK(watch.periods[0].until == minutes(130));
    CHECK(watch.periods[1].until == minutes(290));
    CHECK(watch.periods[1].looked_until == minutes(290));
    CHECK(watch.total == minutes(130 + 90));

    watch = watch_by("JCoP-10");
    watch = watch_over(watch, {{minutes(10), minutes(20)}, {minutes(12), minutes(15)}});
    REQUIRE(watch.periods.size() == 1);
    CHECK(watch.periods[0].last_heat == minutes(20));
    CHECK(watch.periods[0].until == minutes(80));
    CHECK(watch.periods[0].looked_until == minutes(140));
}

TEST_CASE("every minute of flame, arc and grinding in a day, and so long after it, is watched") {
    for (const char* rules : {"longest", "29CFR1910.252", "JCoP-10"}) {
        const Plan planned =
            plan(job_from(job_with(fmt::format("\"fire_rules\": \"{}\"", rules), lug)), shop());
        REQUIRE(planned.day);
        const FireWatch& watch = planned.fire_watch;
        REQUIRE_FALSE(watch.periods.empty());
        int hot = 0;
        for (const DayEntry& entry : planned.day->day.entries) {
            const bool is_hot = entry.arc_time > Time() || entry.step == steps::preheat ||
                                entry.step == steps::clean_layer || entry.step == steps::reheat ||
                                entry.step == steps::hold;
            if (!is_hot)
                continue;
            ++hot;
            CAPTURE(rules, words_of(entry));
            CHECK(std::any_of(watch.periods.begin(), watch.periods.end(), [&](const WatchPeriod& period) {
                return period.from <= entry.from && entry.to + watch.after.value <= period.until;
            }));
        }
        CHECK(hot > 10);
        for (std::size_t i = 1; i < watch.periods.size(); ++i)
            CHECK(watch.periods[i - 1].until < watch.periods[i].from);
    }
}

TEST_CASE("a flame that slows the cooling is watched too") {
    const Plan planned = plan(job_from(job_with("", lug)), shop());
    REQUIRE(planned.bores[0].heat_balance);
    const HeatBalance& balance = *planned.bores[0].heat_balance;
    const BossCooling& cooling = balance.cold().run.cooling();
    REQUIRE(cooling.heat > Energy());
    REQUIRE(balance.heater.power * balance.heater.efficiency * cooling.slowed >= cooling.heat);
    Time last_ring_or_hold;
    for (const DayEntry& entry : planned.day->day.entries)
        if (entry.step.has_fire && entry.bore == "lug 1")
            last_ring_or_hold = entry.to;
    const Time least = last_ring_or_hold + cooling.slowed + planned.fire_watch.after.value;
    CHECK(planned.fire_watch.periods.front().until >= least - in_si<Time>(1e-6));
}

TEST_CASE("a rule set that nobody knows is refused with the nearest name") {
    CHECK(refusal(Origin::job,
                  [] { plan(job_from(job_with("\"fire_rules\": \"NFPA51B-2018\"", lug)), shop()); })
              .find("site.fire_rules: \"NFPA51B-2018\" is no rule of the fire watch in the table of "
                    "cautions; did "
                    "you mean \"NFPA51B-201") != std::string::npos);
}
