#include <ringfill/caution/fire_watch.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/sort.hpp>

#include <ringfill/day/calendar.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

template <class Quantity>
bool is_more(const std::optional<Sourced<Quantity>>& one, const std::optional<Sourced<Quantity>>& than) {
    return one && (!than || one->value > than->value);
}

/// Of each figure the longest of the sets.
WatchRule longest_of(const std::vector<FireRule>& rules) {
    WatchRule watch;
    for (const FireRule& rule : rules) {
        if (watch.rules.empty() || rule.after.value > watch.after.value) {
            watch.after = rule.after;
            watch.rules = {rule.name};
        } else if (rule.after.value == watch.after.value)
            watch.rules.push_back(rule.name);
        if (rule.clear.value > watch.clear.value)
            watch.clear = rule.clear;
        if (is_more(rule.checks_for, watch.checks_for))
            watch.checks_for = rule.checks_for;
        // looks are asked for no less often than by any of the sets
        if (rule.checks_every && (!watch.checks_every || is_more(watch.checks_every, rule.checks_every)))
            watch.checks_every = rule.checks_every;
    }
    return watch;
}

std::string more_than(const WatchRule& watch, const WatchRule& longest, UnitSystem units) {
    std::vector<std::string> parts;
    if (longest.after.value > watch.after.value)
        parts.push_back(show(longest.after.value));
    if (is_more(longest.checks_for, watch.checks_for))
        parts.push_back(fmt::format("looks for {} after that", show(longest.checks_for->value)));
    if (longest.clear.value > watch.clear.value)
        parts.push_back(fmt::format("{} clear", show_clear(longest.clear.value, units)));
    return listed(parts, ", ");
}

} // namespace

std::optional<WatchRule> watch_rule(const std::vector<FireRule>& rules,
                                    const std::optional<std::string>& asked, UnitSystem units,
                                    std::vector<Fault>& faults) {
    const bool any = !asked || *asked == longest_fire_rule;
    std::vector<FireRule> named = rules;
    if (!any)
        std::erase_if(named, [&](const FireRule& rule) { return rule.name != *asked; });
    WatchRule rule = longest_of(named);
    if (rule.rules.empty()) {
        std::vector<std::string> known = {std::string(longest_fire_rule)};
        for (const FireRule& one : rules)
            known.push_back(one.name);
        const std::string& name = asked ? *asked : known.front();
        faults.push_back(fault_at_path("site.fire_rules", fmt::format("\"{}\"", name),
                                       "is no rule of the fire watch in the table of cautions",
                                       suggest(name, known)));
        return std::nullopt;
    }
    rule.longest = any;
    if (!any)
        rule.others = more_than(rule, longest_of(rules), units);
    return rule;
}

std::string fire_rule_in_words(const WatchRule& rule) {
    if (rule.longest)
        return fmt::format("the longest of the rule sets known: {}", listed(rule.rules, ", "));
    return fmt::format("the job asks for {}{}", listed(rule.rules, ", "),
                       rule.others.empty() ? "" : fmt::format("; others ask for {}", rule.others));
}

FireWatch watch_over(const WatchRule& rule, std::vector<HotSpan> spans) {
    FireWatch watch{rule, {}, {}};
    ranges::sort(spans, {}, &HotSpan::from);
    const Time looks = watch.checks_for ? watch.checks_for->value : Time();
    for (const HotSpan& span : spans) {
        if (watch.periods.empty() || span.from > watch.periods.back().until)
            watch.periods.push_back({span.from, span.to, {}, {}});
        WatchPeriod& period = watch.periods.back();
        period.last_heat = std::max(period.last_heat, span.to);
        period.until = period.last_heat + watch.after.value;
        period.looked_until = period.until + looks;
    }
    for (const WatchPeriod& period : watch.periods)
        watch.total += period.until - period.from;
    return watch;
}

Time slowed_by_heater(const HeatBalance& balance) {
    return std::max(balance.hot.run.cooling().slowed, balance.cold().run.cooling().slowed);
}

std::vector<HotSpan> hot_pieces(const Schedule& day, const std::vector<BorePlan>& bores) {
    std::vector<HotSpan> pieces;
    for (const BorePlan& bore : bores)
        for (int piece = 1; piece <= bore.count; ++piece) {
            HotSpan hot{{}, {}, slowed_by_heater(*bore.heat_balance), piece_name(bore, piece)};
            for (const DayEntry& entry : day.entries)
                if (entry.step.has_fire && entry.bore == hot.piece) {
                    const bool was_left = entry.step.can_be_cut && entry.from > hot.to; // over night
                    if (was_left && hot.to > Time())
                        pieces.push_back({hot.from, hot.to, {}, hot.piece});
                    hot.from = hot.to > Time() && !was_left ? hot.from : entry.from;
                    hot.to = entry.to + hot.slowed;
                }
            if (hot.to > Time())
                pieces.push_back(std::move(hot));
        }
    return pieces;
}

std::vector<std::string> fire_watch_notes(const FireWatch& watch, const DayPlan& day,
                                          const std::vector<BorePlan>& bores) {
    std::vector<std::string> notes;
    for (const HotSpan& hot : hot_pieces(day.day, bores))
        if (hot.slowed > Time())
            notes.push_back(fmt::format("{}: the blanket alone does not slow its cooling enough: somebody "
                                        "stays with the heater, to {}.",
                                        hot.piece, day_and_clock(day.calendar, hot.to)));
    for (const WatchPeriod& period : watch.periods)
        if (period.until > working_end(day.calendar, period.from))
            notes.push_back(fmt::format("fire watch: it goes on to {}, after the working day has ended.",
                                        day_and_clock(day.calendar, period.until)));
    return notes;
}

std::vector<Working> fire_watch_working(const FireWatch& watch) {
    const Amount after = in_seconds(watch.after.value);
    std::vector<Working> work = {taken("after_s", {"t", after}, watch.after.source),
                                 taken("clear_m", {"t", in_metres(watch.clear.value)}, watch.clear.source)};
    for (const auto& [figure, time] :
         {std::pair("checks_for_s", &watch.checks_for), std::pair("checks_every_s", &watch.checks_every)})
        if (watch.checks_for)
            work.push_back(taken(figure, {"t", in_seconds((*time)->value)}, (*time)->source));
    const auto& [looks, source] = watch.checks_for.value_or(Sourced<Time>{Time(), watch.after.source});
    std::vector<double> lengths;
    for (const WatchPeriod& period : watch.periods) {
        append(work,
               under(element_path("periods", lengths.size()),
                     worked({{"t", in_seconds(period.from)},
                             {"t_last", in_seconds(period.last_heat)},
                             {"t_after", after},
                             {"t_looks", in_seconds(looks)}},
                            {{"from_s", "1*t", in_seconds(period.from)},
                             {"until_s", "t_last + t_after", in_seconds(period.until), watch.after.source},
                             {"looked_until_s", "t_last + t_after + t_looks", in_seconds(period.looked_until),
                              source}})));
        lengths.push_back((period.until - period.from).value());
    }
    if (!lengths.empty())
        work.push_back(worked("total_s", "sum(t)", {{"t", lengths, "s"}}, in_seconds(watch.total)));
    return under("fire_watch", std::move(work));
}

} // namespace ringfill
