#include <ringfill/report/text/day_text.hpp>

#include <algorithm>
#include <optional>
#include <vector>

#include <fmt/format.h>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>

namespace ringfill {
namespace {

/// A line of the day for people.
struct DayLine {
    Time from;
    Time to;
    std::string bore;
    std::string what;
    bool night = false;
};

bool goes_on(const DayEntry& before, const DayEntry& next) {
    return before.kind().is_among_rings && next.kind().is_among_rings && before.bore == next.bore;
}

/// Welding stretches, cleaning and waits of one bore that follow one another, as one line.
DayLine welding(std::vector<DayEntry>::const_iterator first, std::vector<DayEntry>::const_iterator last) {
    Time arc = {};
    Time waits = {};
    int stops = 0;
    for (auto entry = first; entry != last; ++entry) {
        arc += entry->arc_time;
        if (entry->kind().waits()) {
            waits += entry->to - entry->from;
            ++stops;
        }
    }
    std::string what = fmt::format("weld, arc {}", show(arc));
    if (stops > 0)
        what += fmt::format(", {} to cool {}",
                            stops == 1 ? std::string("1 wait") : fmt::format("{} waits", stops), show(waits));
    return {first->from, std::prev(last)->to, first->bore, std::move(what)};
}

std::vector<DayLine> lines_of(const Schedule& day) {
    std::vector<DayLine> lines;
    for (auto entry = day.entries.begin(); entry != day.entries.end();) {
        auto next = std::next(entry);
        while (next != day.entries.end() && goes_on(*std::prev(next), *next))
            ++next;
        if (entry->kind().is_among_rings)
            lines.push_back(welding(entry, next));
        else
            lines.push_back({entry->from, entry->to, entry->bore, words_of(*entry), entry->night});
        entry = next;
    }
    return lines;
}

std::string days(const DayPlan& plan, const Style& style) {
    std::string text;
    int day = -1;
    for (const DayLine& line : lines_of(plan.day)) {
        if (day_of(line.from) != day && !line.night) {
            day = day_of(line.from);
            text += style.strong(fmt::format("DAY {}", day + 1)) + '\n';
        }
        const std::string who = line.bore.empty() ? std::string() : printable(line.bore, 40) + ": ";
        text += line.night ? wrapped(fmt::format("night  {}{}", who, line.what), "  ")
                           : wrapped(fmt::format("{}  {}{} ({})", clock_of(plan.calendar, line.from), who,
                                                 line.what, show(line.to - line.from)),
                                     "  ");
    }
    return text + fmt::format("  {}  done\n", clock_of(plan.calendar, plan.day.ends));
}

/// The first entry of a piece that does something.
std::optional<std::size_t> begins(const Schedule& day, const std::string& bore, Step step) {
    for (std::size_t i = 0; i < day.entries.size(); ++i)
        if (day.entries[i].bore == bore && day.entries[i].step == step)
            return i;
    return std::nullopt;
}

/// The last entry of a piece's welding.
std::optional<std::size_t> welded(const Schedule& day, const std::string& bore) {
    std::optional<std::size_t> end;
    for (std::size_t i = 0; i < day.entries.size(); ++i)
        if (day.entries[i].bore == bore && day.entries[i].kind().is_among_rings)
            end = i;
    return end;
}

} // namespace

Sentences day_sentences(const DayPlan& plan) {
    Sentences sentences;
    const auto tell = [&](std::string text) { sentences.push_back({std::move(text), Stands::head}); };
    tell(fmt::format("Done {} after {} of work, the arc burns {:.0f} % of it.",
                     day_and_clock(plan.calendar, plan.day.ends), show(plan.worked), 100 * plan.arc_share()));
    if (plan.day.ends < plan.one_by_one)
        tell(fmt::format("Bores of a line take turns; one after the other it is done {}.",
                         day_and_clock(plan.calendar, plan.one_by_one)));
    else
        tell("One bore after the other: taking turns would save nothing here.");
    if (plan.back)
        tell(fmt::format("Come back for the crack test {} after that, on {} ({}).", show(plan.back->wait),
                         day_and_clock(plan.calendar, plan.back->at), show(plan.back->length)));
    tell("Standing times are common practice and differ by crew: put your own into the table of "
         "standing times. The fire watch outlasts the heat: see the cautions.");
    return sentences;
}

std::vector<PieceClock> piece_clocks(const Schedule& day, const BorePlan& bore) {
    std::vector<PieceClock> pieces;
    for (int piece = 1; piece <= bore.count; ++piece) {
        const std::string name = piece_name(bore, piece);
        const auto torch = begins(day, name, Step::mount_torch);
        const auto end = welded(day, name);
        const auto rough = begins(day, name, Step::mount_tool);
        const auto finish = begins(day, name, Step::finish);
        if (torch && end && rough && finish)
            pieces.push_back({name, *torch, *end, *rough, *finish});
    }
    return pieces;
}

std::string bore_clock(const Plan& plan, const BorePlan& bore) {
    if (!plan.day)
        return {};
    const auto& entries = plan.day->day.entries;
    const auto at = [&](Time time) { return day_and_clock(plan.day->calendar, time); };
    std::string text;
    for (const PieceClock& piece : piece_clocks(plan.day->day, bore))
        text += wrapped(fmt::format("By the clock, {}: torch on {}, last ring {}, roughing {}, finishing {}.",
                                    printable(piece.name, 60), at(entries[piece.torch].from),
                                    at(entries[piece.last_ring].to), at(entries[piece.rough].from),
                                    at(entries[piece.finish].from)),
                        "  ");
    return text;
}

std::string day_text(const Plan& plan, const Style& style) {
    std::string text = view_head(plan, style);
    text += plan.day ? days(*plan.day, style) + "\n" + wrapped(day_sentences(*plan.day))
                     : wrapped("There is no day for this job; the notes say why.", "");
    return text + "\n" + view_end(plan, style);
}

} // namespace ringfill
