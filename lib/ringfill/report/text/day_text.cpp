#include <ringfill/report/text/day_text.hpp>

#include <iterator>

#include <fmt/format.h>

#include <range/v3/view/chunk_by.hpp>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/day_sentences.hpp>
#include <ringfill/say/time_sentences.hpp>

namespace ringfill {
namespace {

/// Welding stretches, cleaning and waits of one bore that follow one another are one line.
bool goes_on(const DayEntry& before, const DayEntry& next) {
    return before.step.is_among_rings && next.step.is_among_rings && before.bore == next.bore;
}

template <class Entries>
std::string welding(const Entries& entries) {
    Time arc = {};
    Time waits = {};
    int stops = 0;
    for (const DayEntry& entry : entries) {
        arc += entry.arc_time;
        waits += entry.step.waits() ? entry.to - entry.from : Time();
        stops += entry.step.waits() ? 1 : 0;
    }
    const std::string text = fmt::format("weld, arc {}", show(arc));
    return stops == 0 ? text : fmt::format("{}, {} to cool {}", text, counted(stops, "wait"), show(waits));
}

std::string days(const DayPlan& plan, const Style& style) {
    std::string text;
    int day = -1;
    for (const auto& entries : plan.day.entries | ranges::views::chunk_by(goes_on)) {
        const DayEntry& first = *entries.begin();
        const Time to = std::prev(entries.end())->to;
        if (day_of(first.from) != day && !first.night) {
            day = day_of(first.from);
            text += style.strong(fmt::format("DAY {}", day + 1)) + '\n';
        }
        const std::string what = (first.bore.empty() ? "" : printable(first.bore, 40) + ": ") +
                                 (first.step.is_among_rings ? welding(entries) : words_of(first));
        text += wrapped(first.night
                            ? "night  " + what
                            : fmt::format("{}  {} ({}{})", clock_of(plan.calendar, first.from), what,
                                          show(to - first.from), first.phase == Phase::idle ? ", idle" : ""));
    }
    return text + fmt::format("  {}  done\n", clock_of(plan.calendar, plan.day.ends));
}

} // namespace

std::string bore_clock(const Plan& plan, const BorePlan& bore) {
    if (!plan.day)
        return {};
    const std::vector<DayEntry>& entries = plan.day->day.entries;
    const auto at = [&](Time time) { return day_and_clock(plan.day->calendar, time); };
    return listed(piece_clocks(plan.day->day, bore), "", [&](const PieceClock& piece) {
        return wrapped(fmt::format("By the clock, {}: torch on {}, last ring {}, roughing {}, finishing {}.",
                                   printable(piece.name, 60), at(entries[piece.torch].from),
                                   at(entries[piece.last_ring].to), at(entries[piece.rough].from),
                                   at(entries[piece.finish].from)));
    });
}

std::string day_text(const Plan& plan, const Style& style) {
    return whole_view(plan, style,
                      (plan.day ? days(*plan.day, style) + "\n" + wrapped(day_sentences(*plan.day))
                                : wrapped("There is no day for this job; the notes say why.", "")) +
                          "\n");
}

} // namespace ringfill
