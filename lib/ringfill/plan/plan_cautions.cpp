#include <ringfill/plan/plan_cautions.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/caution/table_cautions.hpp>
#include <ringfill/day/clock.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/plan/work_facts_of.hpp>

namespace ringfill {
namespace {

/// From the first to the last entry of a piece with fire in it.
std::optional<HotSpan> hot_span(const Schedule& day, const std::string& piece) {
    std::optional<HotSpan> span;
    for (const DayEntry& entry : day.entries)
        if (entry.fire && entry.bore == piece)
            span = HotSpan{span ? span->from : entry.from, entry.to};
    return span;
}

int rank(const Caution& caution) {
    const int time = caution.when == "before" ? 0 : caution.when == "during" ? 1 : 2;
    return caution.applies == "yes" ? time : 3;
}

Bibliography cited(const std::vector<Caution>& cautions, const Shop& shop) {
    Bibliography sources;
    const auto add = [&](const std::string& key) {
        if (sources.contains(key))
            return;
        if (const auto own = shop.cautions.sources.find(key); own != shop.cautions.sources.end())
            sources.insert(*own);
        for (const Family& family : shop.registry.families)
            if (const auto known = family.sources.find(key); known != family.sources.end())
                sources.insert(*known);
    };
    for (const Caution& caution : cautions) {
        add(caution.source);
        for (const std::string& key : caution.more_sources)
            add(key);
    }
    return sources;
}

Working as_it_is(std::string figure, double value, std::string unit, std::string source) {
    return {std::move(figure), "1*t", {{"t", value, unit}}, value, unit, std::move(source)};
}

} // namespace

Time slowed_by_heater(const HeatBalance& balance) {
    const bool by_flame = balance.hot.run.slow_heat > Energy() || balance.cold().run.slow_heat > Energy();
    return by_flame ? std::max(balance.hot.run.cooling_to_rough.value_or(Time()),
                               balance.cold().run.cooling_to_rough.value_or(Time()))
                    : Time();
}

std::optional<FireWatch> fire_watch_of(const Job& job, const Shop& shop, std::vector<Fault>& faults) {
    auto watch = fire_watch(shop.cautions.fire_rules, job.site.fire_rules, job.units);
    if (!watch) {
        std::vector<std::string> known = {std::string(longest_fire_rule)};
        for (const FireRule& rule : shop.cautions.fire_rules)
            known.push_back(rule.name);
        faults.push_back(fault_at_path("site.fire_rules", fmt::format("\"{}\"", *job.site.fire_rules),
                                       "is no rule of the fire watch in the table of cautions",
                                       suggest(*job.site.fire_rules, known)));
    }
    return watch;
}

void plan_fire_watch(Plan& plan) {
    if (!plan.day)
        return;
    std::vector<HotSpan> spans;
    for (const BorePlan& bore : plan.bores)
        for (int piece = 1; piece <= bore.count; ++piece)
            if (auto span = hot_span(plan.day->day, piece_name(bore, piece))) {
                const Time slow = slowed_by_heater(*bore.heat_balance);
                span->to += slow;
                spans.push_back(*span);
                if (slow > Time())
                    plan.notes.push_back(fmt::format(
                        "{}: somebody stays with the heater that slows its cooling, to {}; a blanket may do "
                        "instead.",
                        piece_name(bore, piece), day_and_clock(plan.day->calendar, span->to)));
            }
    watch_over(plan.fire_watch, std::move(spans));
    for (const WatchPeriod& period : plan.fire_watch.periods)
        if (const Time home = working_end(plan.day->calendar, period.from); period.until > home)
            plan.notes.push_back(fmt::format("fire watch: it goes on to {}, after the working day has ended.",
                                             day_and_clock(plan.day->calendar, period.until)));
}

void judge_by_table(Plan& plan, const Job& job, const Shop& shop, const SettingsByProcedure& settings) {
    ranges::push_back(plan.cautions, table_cautions(shop.cautions, work_facts_of(plan, job, shop, settings),
                                                    plan.fire_watch));
    std::stable_sort(plan.cautions.begin(), plan.cautions.end(),
                     [](const Caution& one, const Caution& other) { return rank(one) < rank(other); });
    for (const ReplacedCaution& one : shop.cautions.replaced)
        plan.notes.push_back(fmt::format(
            "cautions: \"{}\" stands as {} has it, not as the product's own table.", one.name, one.file));
    plan.sources = cited(plan.cautions, shop);
}

std::vector<Working> fire_watch_working(const FireWatch& watch) {
    std::vector<Working> work = {
        as_it_is("fire_watch.after_s", watch.after.value.value(), "s", watch.after.source),
        as_it_is("fire_watch.clear_m", watch.clear.value.value(), "m", watch.clear.source)};
    const double after = watch.after.value.value();
    double looks = 0;
    if (watch.checks_for) {
        looks = watch.checks_for->value.value();
        work.push_back(as_it_is("fire_watch.checks_for_s", looks, "s", watch.checks_for->source));
        work.push_back(as_it_is("fire_watch.checks_every_s", watch.checks_every->value.value(), "s",
                                watch.checks_every->source));
    }
    std::vector<double> lengths;
    for (std::size_t i = 0; i < watch.periods.size(); ++i) {
        const WatchPeriod& period = watch.periods[i];
        const std::string figure = fmt::format("fire_watch.periods[{}]", i);
        const double last = period.last_heat.value();
        work.push_back(as_it_is(figure + ".from_s", period.from.value(), "s", "own"));
        work.push_back({figure + ".until_s",
                        "t_last + t_after",
                        {{"t_last", last, "s"}, {"t_after", after, "s"}},
                        period.until.value(),
                        "s",
                        watch.after.source});
        work.push_back({figure + ".looked_until_s",
                        "t_last + t_after + t_looks",
                        {{"t_last", last, "s"}, {"t_after", after, "s"}, {"t_looks", looks, "s"}},
                        period.looked_until.value(),
                        "s",
                        watch.checks_for ? watch.checks_for->source : watch.after.source});
        lengths.push_back((period.until - period.from).value());
    }
    if (!lengths.empty())
        work.push_back(
            {"fire_watch.total_s", "sum(t)", {{"t", lengths, "s"}}, watch.total.value(), "s", "own"});
    return work;
}

} // namespace ringfill
