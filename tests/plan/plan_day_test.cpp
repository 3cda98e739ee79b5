#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "heat/heat_balance_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// Two eyes on one bar, or on a bar each.
Plan two_eyes(bool one_line, const std::string& head = "") {
    BalanceJob job;
    job.bore = one_line ? R"("count": 2, "line": "arm",)" : R"("count": 2,)";
    std::string text = job.text();
    text.insert(1, head);
    return ringfill::plan(job_from(text), shop());
}

double minutes_of(const Plan& plan, const std::string& bore, const std::string& step) {
    double minutes = 0;
    for (const DayEntry& entry : plan.day.value().day.entries)
        if (entry.bore == bore && words_of(entry) == step)
            minutes += (entry.to - entry.from).value() / 60;
    return minutes;
}

/// Minutes of every entry that uses the bar or the hands on it, by piece.
double begins(const Plan& plan, const std::string& bore, const std::string& step) {
    for (const DayEntry& entry : plan.day.value().day.entries)
        if (entry.bore == bore && words_of(entry) == step)
            return entry.from.value() / 60;
    return -1;
}

} // namespace

TEST_CASE("every minute of a planned day belongs to one step, and the steps are those of the plan") {
    const Plan plan = two_eyes(true);
    const BorePlan& bore = plan.bores.front();
    const HeatRun& run = bore.heat_balance.value().hot.run;
    Time at = {};
    for (const DayEntry& entry : plan.day.value().day.entries) {
        REQUIRE(entry.from == at);
        at = entry.to;
    }
    CHECK(at == plan.day->day.ends);
    double arc = 0;
    for (const DayEntry& entry : plan.day->day.entries)
        arc += entry.arc_time.value();
    CHECK_THAT(arc, WithinAbs(2 * bore.metal.arc.value(), 1e-6));
    for (const char* piece : {"eye 1", "eye 2"}) {
        CHECK_THAT(minutes_of(plan, piece, "preheat"), WithinAbs(run.warm_up.time.value() / 60, 1e-9));
        // 2 min in 25 mm of wall [EN ISO 13916]; the wall is (180 - 94.4) / 2 = 42.8 mm
        CHECK_THAT(minutes_of(plan, piece, "let the heat even out, read it"), WithinAbs(2 * 42.8 / 25, 1e-6));
        CHECK_THAT(minutes_of(plan, piece, "crack check"),
                   WithinAbs(25, 1e-9)); // the table of standing times
    }
}

TEST_CASE("no piece is roughed or finished before it has cooled") {
    const Plan plan = two_eyes(true);
    const HeatRun& run = plan.bores.front().heat_balance.value().hot.run;
    for (const std::string piece : {"eye 1", "eye 2"}) {
        double welded = 0;
        for (const DayEntry& entry : plan.day.value().day.entries)
            if (entry.bore == piece && (entry.step.is_among_rings || entry.step == steps::hold))
                welded = entry.to.value() / 60;
        const double rough = begins(plan, piece, "mount tool");
        CHECK(rough >= welded + run.cooling().to_rough.value().value() / 60 - 1e-6);
        CHECK(begins(plan, piece, "finish and spring pass") >=
              rough + run.cooling().to_finish.value().value() / 60);
    }
}

TEST_CASE("two lugs on one bar are aligned once, skimmed together and take turns") {
    const std::string long_day = R"("working_day": "16 h", "breaks": "0 min",)"; // no evening between them
    const Plan shared = two_eyes(true, long_day);
    const Plan apart = two_eyes(false, long_day);
    CHECK_THAT(minutes_of(shared, "", "set up and align the bar"), WithinAbs(90, 1e-9));
    CHECK_THAT(minutes_of(apart, "", "set up and align the bar"), WithinAbs(180, 1e-9));
    CHECK(begins(shared, "", "skim eye 2") < begins(shared, "eye 1", "mount torch"));
    CHECK(shared.day->day.ends < shared.day->one_by_one);
    CHECK(shared.day->day.ends < apart.day->day.ends);
    // The second eye is welded while the first cools.
    CHECK(begins(shared, "eye 2", "mount torch") < begins(shared, "eye 1", "mount tool"));
}

TEST_CASE("the day begins when the job says, nights are told, and the visit for the crack test comes later") {
    const Plan plan = two_eyes(true, R"("start": "6:30", "working_day": "5 h",)");
    const auto& entries = plan.day.value().day.entries;
    CHECK(std::any_of(entries.begin(), entries.end(), [](const DayEntry& entry) { return entry.night; }));
    CHECK(plan.day->calendar.starts.value() == 6.5 * 3600);
    const auto late = [&](const DayEntry& entry) { // hands after the working day and what may come late
        return !entry.step.waits() && entry.step != steps::take_off_bar && entry.step != steps::pack &&
               std::fmod(entry.to.value(), 86'400) > 5.75 * 3600 + 1;
    };
    for (const DayEntry& entry : entries)
        if (!entry.step.is_among_rings && entry.step != steps::hold && entry.step != steps::preheat) {
            INFO(words_of(entry));
            CHECK_FALSE(late(entry));
        }
    if (plan.day->back)
        CHECK(plan.day->back->at >= plan.day->day.ends + plan.day->back->wait);
}

TEST_CASE("a fleet of bores is not laid out by the clock, and the notes say so") {
    BalanceJob job;
    job.bore = R"("count": 101,)";
    const Plan plan = job.plan();
    CHECK_FALSE(plan.day);
    CHECK(std::count(plan.notes.begin(), plan.notes.end(),
                     "day: left out, because 101 pieces are more than the 100 that are laid out.") == 1);
    job.bore = R"("count": 100,)";
    CHECK(job.plan().day);
}

TEST_CASE("without a heat balance there is no day, and the notes say why") {
    BalanceJob job;
    job.with_voltage = false;
    const Plan plan = job.plan();
    CHECK_FALSE(plan.day);
    CHECK(std::count(plan.notes.begin(), plan.notes.end(),
                     "day: left out, because the heat balance of eye is left out.") == 1);
    job.with_voltage = true;
    job.heater_kW = 1.5;
    const Plan weak = job.plan();
    CHECK_FALSE(weak.day);
    CHECK(std::count(weak.notes.begin(), weak.notes.end(),
                     "day: left out, because the heat of eye does not come to its end.") == 1);
}

TEST_CASE("electrodes are welded by hand: no torch is mounted, and changing and chipping takes its time") {
    // 2 min for each minute of arc of the longest ring, after every ring of a layer but the last, on top of
    // the 12 s of stepping over (the table of standing times).
    const Plan plan = ringfill::plan(job_from(R"({ "format": "ringfill-job/1", "title": "Lug", "units": "mm",
            "procedures": { "main": { "filler": "steel/E7018-H8", "wire": "3.2 mm", "current": "125 A",
              "voltage": "23 V", "travel": "150 mm/min" } },
            "heater": { "kind": "propane", "power": "30 kW", "efficiency": 0.25 },
            "bores": [ { "name": "lug", "base": "steel/C45", "finish_diameter": 80, "length": 40,
              "boss_diameter": 160, "carry_off": "2 W/K", "worn": { "diameter": 84 } } ] })"),
                                     shop());
    REQUIRE(plan.day);
    CHECK(begins(plan, "lug", "mount torch") < 0);
    CHECK_THAT(minutes_of(plan, "lug", "rig the burner"), WithinAbs(10, 1e-9));
    const BorePlan& bore = plan.bores.front();
    double longest_ring = 0;
    double least_pauses = 0;
    for (const Layer& layer : bore.layers)
        longest_ring = std::max(longest_ring, layer.arc.value() / layer.rings);
    for (const Layer& layer : bore.layers)
        least_pauses += (layer.rings - 1) * (12 + 2 * longest_ring);
    CHECK_THAT(bore.heat_balance->hot.settings.step_over.value(), WithinAbs(12 + 2 * longest_ring, 1e-6));
    CHECK(bore.heat_balance->hot.run.told_pausing.value() + bore.heat_balance->hot.run.resting.value() >=
          least_pauses - 1e-6);
    CHECK(std::count_if(plan.assumed.begin(), plan.assumed.end(), [](const Assumed& one) {
              return one.path == "procedures.main.step_over" && one.source == "arc-share-study";
          }) == 1);
}
