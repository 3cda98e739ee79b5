#include <ringfill/report/text/cautions_text.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/caution_list.hpp>
#include <ringfill/report/text/closing.hpp>
#include <ringfill/report/text/columns.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

std::string sources_of(const Plan& plan, const Style& style) {
    std::string text = style.strong("SOURCES") + "\n";
    for (const auto& [key, source] : plan.sources)
        text += wrapped(fmt::format("[{}] {}; {}, {} ({}, {})", key, source.title, source.edition,
                                    source.place, source.kind, source.seen),
                        "- ");
    return text;
}

} // namespace

std::string_view no_watch_by_the_clock() {
    return "By the clock: not known, because no day is laid out; the notes say why.";
}

std::string_view watch_moves_with_the_heat() {
    return "in all. Drying, burning off grease, and any grinding or trimming with sparks start the minutes "
           "anew: "
           "count from the last heat as it was. The boss may be hot long after the watch.";
}

std::vector<std::string> fire_watch_sentences(const Plan& plan) {
    const FireWatch& watch = plan.fire_watch;
    std::vector<std::string> sentences = {fmt::format(
        "A second person, not the one who welds, from the first flame until {} after the last heat; {}.",
        show(watch.after.value), fire_rule_in_words(watch))};
    for (const WatchPeriod& period : watch.periods) {
        const Calendar& calendar = plan.day->calendar;
        const std::string from = day_and_clock(calendar, period.from);
        const auto at = [&](Time time) { return later_clock(calendar, period.from, time); };
        if (period.looked_until > period.until)
            sentences.push_back(fmt::format("{} to {}, then a look at least every {} until {}.", from,
                                            at(period.until), show(watch.checks_every->value),
                                            at(period.looked_until)));
        else
            sentences.push_back(fmt::format("{} to {}.", from, at(period.until)));
    }
    if (watch.periods.empty())
        sentences.emplace_back(no_watch_by_the_clock());
    else
        sentences.push_back(fmt::format("{} {}", show(watch.total), watch_moves_with_the_heat()));
    return sentences;
}

std::string cautions_text(const Plan& plan, const Style& style) {
    std::string text = style.strong(wrapped(printable(plan.title), ""));
    text += fmt::format("Keep clear of what burns: {} all round.\n\n{}\n",
                        show_clear(plan.fire_watch.clear.value, plan.units), style.strong("FIRE WATCH"));
    for (const std::string& sentence : fire_watch_sentences(plan))
        text += wrapped(sentence, "  ");
    text += "\n" + caution_list(plan, style, true) + "\n" + sources_of(plan, style);
    return text + closing_line();
}

} // namespace ringfill
