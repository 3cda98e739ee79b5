#include <ringfill/say/cautions.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/copy_if.hpp>
#include <range/v3/iterator/insert_iterators.hpp>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/take/group.hpp>

namespace ringfill {
namespace {

/// What to look for, named with its bores or procedures.
std::string to_check(const Caution* caution) {
    return caution->about.empty() ? caution->check
                                  : fmt::format("{}: {}", names_of(caution->about), caution->check);
}

} // namespace

std::string source_keys(const Caution& caution) {
    std::vector<std::string> keys = {caution.source};
    ranges::copy_if(caution.more_sources, ranges::back_inserter(keys),
                    [&](const std::string& more) { return !ranges::contains(keys, more); });
    return fmt::format("[{}]", listed(keys, "] ["));
}

std::vector<OpenField> open_fields(const std::vector<Caution>& cautions) {
    std::vector<OpenField> fields;
    for (const Caution& caution : cautions) {
        if (caution.applies == Applies::yes)
            continue;
        auto& known = group_by(fields, &OpenField::field, caution.field).cautions;
        if (!ranges::contains(known, to_check(&caution), to_check))
            known.push_back(&caution);
    }
    return fields;
}

std::vector<std::string> not_stated(const std::vector<Caution>& cautions) {
    std::vector<std::string> sentences;
    for (const auto& [field, open] : open_fields(cautions))
        sentences.push_back(fmt::format("{} ({})", listed(open, ", ", to_check), field));
    return sentences;
}

std::pair<std::string_view, std::string> who_watches(const FireWatch& watch) {
    return {"A second person, not the one who welds, from the first flame until ",
            fmt::format(" after the last heat; {}.", fire_rule_in_words(watch))};
}

Sentences fire_watch_sentences(const Plan& plan) {
    const FireWatch& watch = plan.fire_watch;
    const auto [begin, end] = who_watches(watch);
    Sentences sentences{{fmt::format("{}{}{}", begin, show(watch.after.value), end)}};
    for (const WatchPeriod& period : watch.periods) {
        const Calendar& calendar = plan.day->calendar;
        const auto at = [&](Time time) { return later_clock(calendar, period.from, time); };
        std::string text = fmt::format("{} to {}", day_and_clock(calendar, period.from), at(period.until));
        if (period.looked_until > period.until)
            text += fmt::format(", then a look at least every {} until {}", show(watch.checks_every->value),
                                at(period.looked_until));
        sentences.push_back({text + "."});
    }
    sentences.push_back({watch.periods.empty()
                             ? std::string(no_watch_by_the_clock)
                             : fmt::format("{} {}", show(watch.total), watch_moves_with_the_heat)});
    return sentences;
}

} // namespace ringfill
