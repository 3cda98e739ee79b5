#include <ringfill/day/day_plan.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/day/day_work.hpp>

namespace ringfill {
namespace {

/// Nobody leaves the last cut for the morning for less [common practice, no source].
const Time late_enough = in_si<Time>(45 * 60);

/// The longest wait before the crack test that a family asks for; nothing when none does.
std::optional<Time> crack_test_wait(const std::vector<BorePlan>& bores) {
    std::optional<Time> longest;
    for (const BorePlan& bore : bores)
        for (const AnsweredFigure& value : bore.heat.preheat.values)
            if (value.name == "crack_test_wait_s" && (!longest || value.number > longest->value()))
                longest = in_si<Time>(value.number);
    return longest;
}

std::vector<double> seconds_of(const Schedule& schedule, bool arc_only) {
    std::vector<double> seconds;
    for (const DayEntry& entry : schedule.entries)
        if (arc_only && entry.arc_time > Time())
            seconds.push_back(entry.arc_time.value());
        else if (!arc_only && !entry.night)
            seconds.push_back((entry.to - entry.from).value());
    return seconds;
}

Time sum_of(const std::vector<double>& seconds) {
    double sum = 0;
    for (const double one : seconds)
        sum += one;
    return in_si<Time>(sum);
}

bool is_longer(const BoreWork& bore, Time working_day) {
    return ranges::any_of(bore.blocks, [&](const WorkBlock& block) { return block.length() > working_day; });
}

/// Whether any bore that is not done in a day has a preheat, which it must not fall under.
bool long_bore_is_hot(const std::vector<BorePlan>& bores, const std::vector<LineWork>& lines,
                      Time working_day) {
    for (const LineWork& line : lines)
        for (const BoreWork& work : line.bores)
            if (is_longer(work, working_day))
                for (const BorePlan& bore : bores)
                    for (int piece = 1; piece <= bore.count; ++piece)
                        if (piece_name(bore, piece) == work.bore &&
                            bore.heat.preheat.asked != PreheatState::none)
                            return true;
    return false;
}

} // namespace

PlannedDay plan_day(const Job& job, const std::vector<BorePlan>& bores, const std::vector<StepTime>& times) {
    if (std::string why = no_day_because(bores); !why.empty())
        return {std::nullopt, std::move(why)};
    const WorkBlock arrive{{work_step(Step::unload, time_of(times, "arrive"))}};
    const WorkBlock leave{{work_step(Step::pack, time_of(times, "leave"))}};
    const Time crack_test = time_of(times, "crack test");
    const auto lines = line_works(job, bores, times);
    DayPlan day;
    day.calendar = {job.workday.start, job.workday.length, late_enough};
    day.change_over = job.workday.change_over;
    day.day = lay_out(arrive, lines, leave, day.calendar, day.change_over, Turns::alternating);
    day.one_by_one = lay_out(arrive, lines, leave, day.calendar, day.change_over, Turns::one_by_one).ends;
    day.arc = sum_of(seconds_of(day.day, true));
    day.worked = sum_of(seconds_of(day.day, false));
    if (const auto wait = crack_test_wait(bores))
        day.back = ReturnVisit{*wait, begin_at(day.calendar, day.day.ends + *wait, crack_test), crack_test};
    if (day.day.runs_over)
        day.long_bore = long_bore_is_hot(bores, lines, day.calendar.working_day) ? LongBore::with_preheat
                                                                                 : LongBore::without_preheat;
    return {std::move(day), {}};
}

std::vector<std::string> day_notes(const PlannedDay& planned) {
    if (!planned.day)
        return {fmt::format("day: left out, because {}.", planned.no_day)};
    const std::string hours = show(planned.day->calendar.working_day);
    switch (planned.day->long_bore) {
    case LongBore::with_preheat:
        return {fmt::format("day: one bore is hot for longer than the {} worked a day: have a second pair of "
                            "hands, or keep it at its preheat over the night.",
                            hours)};
    case LongBore::without_preheat:
        return {fmt::format("day: one bore is welded for longer than the {} worked a day: have a second pair "
                            "of hands, or stop for the night; it has no preheat to be kept.",
                            hours)};
    case LongBore::none:
        break;
    }
    return {};
}

std::vector<Working> day_working(const DayPlan& day) {
    const auto end = [](const char* figure, Time at) {
        return worked(figure, "t_end - t_0", {{"t_end", in_seconds(at)}, {"t_0", in_seconds(Time())}},
                      in_seconds(at));
    };
    std::vector<Working> work = {
        end("totals.elapsed_s", day.day.ends), end("day.one_by_one_s", day.one_by_one),
        worked("day.worked_s", "sum(t)", {{"t", seconds_of(day.day, false), "s"}}, in_seconds(day.worked)),
        worked("day.arc_share", "t_arc/t", {{"t_arc", in_seconds(day.arc)}, {"t", in_seconds(day.worked)}},
               day.arc_share()),
        taken("day.start_s", {"t", in_seconds(day.calendar.starts)}, "job")};
    if (day.back) {
        work.push_back(taken("day.return_after_s", {"t", in_seconds(day.back->wait)}, "D10.10"));
        work.push_back(taken("day.return_at_s", {"t", in_seconds(day.back->at)}));
    }
    return work;
}

} // namespace ringfill
