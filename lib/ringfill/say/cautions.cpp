#include <ringfill/say/cautions.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/day/calendar.hpp>

namespace ringfill {

std::string source_keys(const Caution& caution) {
    std::vector<std::string> keys = {caution.source};
    for (const std::string& more : caution.more_sources)
        if (std::find(keys.begin(), keys.end(), more) == keys.end())
            keys.push_back(more);
    return fmt::format("[{}]", fmt::join(keys, "] ["));
}

std::string to_check(const Caution& caution) {
    return caution.about.empty() ? caution.check
                                 : fmt::format("{}: {}", names_of(caution.about), caution.check);
}

std::vector<OpenField> open_fields(const std::vector<Caution>& cautions) {
    std::vector<OpenField> fields;
    for (const Caution& caution : cautions) {
        if (caution.applies == Applies::yes)
            continue;
        auto known = std::find_if(fields.begin(), fields.end(),
                                  [&](const OpenField& one) { return one.field == caution.field; });
        if (known == fields.end())
            known = fields.insert(known, {caution.field, {}});
        if (std::none_of(known->cautions.begin(), known->cautions.end(),
                         [&](const Caution* one) { return to_check(*one) == to_check(caution); }))
            known->cautions.push_back(&caution);
    }
    return fields;
}

std::vector<std::string> not_stated(const std::vector<Caution>& cautions) {
    std::vector<std::string> sentences;
    for (const OpenField& open : open_fields(cautions)) {
        std::string list;
        for (const Caution* caution : open.cautions)
            list += fmt::format("{}{}", list.empty() ? "" : ", ", to_check(*caution));
        sentences.push_back(fmt::format("{} ({})", list, open.field));
    }
    return sentences;
}

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

} // namespace ringfill
