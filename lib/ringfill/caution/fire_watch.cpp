#include <ringfill/caution/fire_watch.hpp>

#include <algorithm>

namespace ringfill {
namespace {

template <class Quantity>
bool is_more(const std::optional<Sourced<Quantity>>& one, const std::optional<Sourced<Quantity>>& than) {
    return one && (!than || one->value > than->value);
}

} // namespace

std::optional<FireWatch> fire_watch(const std::vector<FireRule>& rules,
                                    const std::optional<std::string>& asked) {
    FireWatch watch;
    watch.longest = !asked || *asked == longest_fire_rule;
    for (const FireRule& rule : rules) {
        watch.longest_known = std::max(watch.longest_known, rule.after.value);
        if (!watch.longest && rule.name != *asked)
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
    return watch.rules.empty() ? std::nullopt : std::optional(std::move(watch));
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
