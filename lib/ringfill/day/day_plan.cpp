#include <ringfill/day/day_plan.hpp>

#include <fmt/format.h>

#include <range/v3/numeric/accumulate.hpp>

#include <ringfill/day/day_work.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// More pieces than this are not laid out by the clock.
constexpr int most_pieces = 100;

/// Nobody leaves the last cut for the morning for less [common practice, no source].
const Time late_enough = in_si<Time>(45 * 60);

/// Why there is no day, the end of a sentence; empty when there is one.
std::string no_day_because(const std::vector<BorePlan>& bores) {
    const long pieces = ranges::accumulate(bores, 0L, std::plus<>(), &BorePlan::count);
    if (pieces > most_pieces)
        return fmt::format("{} pieces are more than the {} that are laid out", pieces, most_pieces);
    for (const BorePlan& bore : bores) {
        if (!bore.heat_balance)
            return fmt::format("the heat balance of {} is left out", bore.name);
        if (end_of(*bore.heat_balance) != HeatEnd::done)
            return fmt::format("the heat of {} does not come to its end", bore.name);
    }
    return {};
}

/// The longest wait before the crack test that a family asks for; nothing when none does.
std::optional<Time> crack_test_wait(const std::vector<BorePlan>& bores) {
    std::optional<Time> longest;
    for (const BorePlan& bore : bores)
        for (const AnsweredFigure& value : bore.heat.preheat.values)
            if (value.name == "crack_test_wait_s" && (!longest || value.number > longest->value()))
                longest = in_si<Time>(value.number);
    return longest;
}

bool is_waiting(Phase phase) {
    return phase == Phase::waiting;
}

bool is_idle(Phase phase) {
    return phase == Phase::idle;
}

bool is_pause(Phase phase) {
    return phase == Phase::pause;
}

/// What the hours by day add up to.
struct DaySum {
    const char* figure;
    Time DayPlan::*sum;
    bool (*counts)(Phase);
};
constexpr DaySum day_sums[] = {{"day.worked_s", &DayPlan::worked, is_work},
                               {"day.waited_s", &DayPlan::waited, is_waiting},
                               {"day.idle_s", &DayPlan::idle, is_idle},
                               {"day.breaks_s", &DayPlan::breaks, is_pause}};

} // namespace

PlannedDay plan_day(const Job& job, const std::vector<BorePlan>& bores, const std::vector<StepTime>& times) {
    if (std::string why = no_day_because(bores); !why.empty())
        return {std::nullopt, std::move(why)};
    DayPlan day{.calendar = {job.day_start, job.working_day, late_enough, job.breaks}};
    const JobWork work = work_on(job, bores, times);
    const auto laid_out = [&](Turns turns) { return lay_out(work, day.calendar, job.change_over, turns); };
    day.day = laid_out(Turns::alternating);
    day.one_by_one = laid_out(Turns::one_by_one).ends;
    day.arc = ranges::accumulate(day.day.entries, Time(), std::plus<>(), &DayEntry::arc_time);
    for (const auto& [figure, sum, counts] : day_sums)
        day.*sum = ranges::accumulate(stretches_of(day.day, counts), Time());
    day.overtime = overtime(work, day.calendar, job.change_over, day.day.ends);
    if (const auto wait = crack_test_wait(bores)) {
        const Time length = step_time(times, "crack test").time.value;
        day.back = ReturnVisit{*wait, begin_at(day.calendar, day.day.ends + *wait, length), length};
    }
    return {std::move(day), {}};
}

std::vector<std::string> day_notes(const PlannedDay& planned) {
    if (!planned.day)
        return {fmt::format("day: left out, because {}.", planned.no_day)};
    const DayPlan& plan = *planned.day;
    std::vector<std::string> notes;
    if (plan.overtime)
        notes.push_back(fmt::format("day: {:.0f} min more on day {} end the work a day earlier, {}.",
                                    plan.overtime->day.by.value() / factor::minute,
                                    plan.overtime->day.day + 1,
                                    day_and_clock(plan.calendar, plan.overtime->ends)));
    for (const auto& [day, bore] : plan.day.breaks_in_fire)
        notes.push_back(fmt::format("day: the break of day {} falls into the heat of {}: have it in turns, "
                                    "somebody stays and keeps it between its minimum and maximum.",
                                    day + 1, bore));
    if (plan.day.long_bore == LongBore::none)
        return notes;
    const bool hot = plan.day.long_bore == LongBore::with_preheat;
    notes.push_back(fmt::format(
        "day: one bore is {} for longer than the {} worked a day: have a second pair of hands, or {}.",
        hot ? "hot" : "welded", show(plan.calendar.working_day),
        hot ? "keep it at its preheat over the night" : "stop for the night; it has no preheat to be kept"));
    return notes;
}

std::vector<Working> day_working(const DayPlan& day) {
    const auto end = [](const char* figure, Time at) {
        return worked(figure, "t_end - t_0", {{"t_end", in_seconds(at)}, {"t_0", in_seconds(Time())}},
                      in_seconds(at));
    };
    std::vector<Working> work = {
        end("totals.elapsed_s", day.day.ends), end("day.one_by_one_s", day.one_by_one),
        worked("day.arc_share", "t_arc/t", {{"t_arc", in_seconds(day.arc)}, {"t", in_seconds(day.worked)}},
               day.arc_share()),
        taken("day.start_s", {"t", in_seconds(day.calendar.starts)}, "job")};
    for (const auto& [figure, sum, counts] : day_sums) {
        std::vector<double> seconds;
        for (const Time& stretch : stretches_of(day.day, counts))
            seconds.push_back(stretch.value());
        work.push_back(seconds.empty() ? taken(figure, {"t", in_seconds(Time())})
                                       : worked(figure, "sum(t)", {{"t", std::move(seconds), "s"}},
                                                in_seconds(day.*sum)));
    }
    if (day.back) {
        work.push_back(taken("day.return_after_s", {"t", in_seconds(day.back->wait)}, "D10.10"));
        work.push_back(taken("day.return_at_s", {"t", in_seconds(day.back->at)}));
    }
    return work;
}

} // namespace ringfill
