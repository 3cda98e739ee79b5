#include <ringfill/caution/fire_watch.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/table/braces.hpp>

namespace ringfill {
namespace {

template <class Quantity>
bool is_more(const std::optional<Sourced<Quantity>>& one, const std::optional<Sourced<Quantity>>& than) {
    return one && (!than || one->value > than->value);
}

/// Of each figure the longest of the sets whose name fits.
template <class Fits>
FireWatch longest_of(const std::vector<FireRule>& rules, Fits fits) {
    FireWatch watch;
    for (const FireRule& rule : rules) {
        if (!fits(rule.name))
            continue;
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

std::string more_than(const FireWatch& watch, const FireWatch& longest, UnitSystem units) {
    std::string text;
    const auto add = [&](const std::string& one) { text += (text.empty() ? "" : ", ") + one; };
    if (longest.after.value > watch.after.value)
        add(show(longest.after.value));
    if (is_more(longest.checks_for, watch.checks_for))
        add(fmt::format("looks for {} after that", show(longest.checks_for->value)));
    if (longest.clear.value > watch.clear.value)
        add(fmt::format("{} clear", show_clear(longest.clear.value, units)));
    return text;
}

} // namespace

std::optional<FireWatch> fire_watch(const std::vector<FireRule>& rules,
                                    const std::optional<std::string>& asked, UnitSystem units) {
    FireWatch longest = longest_of(rules, [](const std::string&) { return true; });
    if (!asked || *asked == longest_fire_rule)
        return longest.rules.empty() ? std::nullopt : std::optional(std::move(longest));
    FireWatch watch = longest_of(rules, [&](const std::string& name) { return name == *asked; });
    if (watch.rules.empty())
        return std::nullopt;
    watch.longest = false;
    watch.others = more_than(watch, longest, units);
    return watch;
}

std::string fire_rule_in_words(const FireWatch& watch) {
    if (watch.longest)
        return fmt::format("the longest of the rule sets known: {}", fmt::join(watch.rules, ", "));
    return fmt::format("the job asks for {}{}", fmt::join(watch.rules, ", "),
                       watch.others.empty() ? std::string()
                                            : fmt::format("; others ask for {}", watch.others));
}

void watch_over(FireWatch& watch, std::vector<HotSpan> spans) {
    std::sort(spans.begin(), spans.end(),
              [](const HotSpan& one, const HotSpan& other) { return one.from < other.from; });
    const Time looks = watch.checks_for ? watch.checks_for->value : Time();
    watch.periods.clear();
    for (const HotSpan& span : spans) {
        const Time last = watch.periods.empty() ? span.to : std::max(watch.periods.back().last_heat, span.to);
        if (watch.periods.empty() || span.from > watch.periods.back().until)
            watch.periods.push_back(
                {span.from, span.to, span.to + watch.after.value, span.to + watch.after.value + looks});
        else
            watch.periods.back() = {watch.periods.back().from, last, last + watch.after.value,
                                    last + watch.after.value + looks};
    }
    watch.total = Time();
    for (const WatchPeriod& period : watch.periods)
        watch.total += period.until - period.from;
}

} // namespace ringfill
