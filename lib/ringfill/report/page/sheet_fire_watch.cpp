#include <ringfill/report/page/sheet_fire_watch.hpp>

#include <fmt/format.h>

#include <ringfill/day/clock.hpp>
#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/text/cautions_text.hpp>

namespace ringfill {

Markup sheet_fire_watch(const Plan& plan) {
    const FireWatch& watch = plan.fire_watch;
    Markup page =
        element("h2", "Fire watch", {{"id", "fire-watch"}}) +
        element("p", words("A second person, not the one who welds, from the first flame until ") +
                         figure("fire_watch.after_s", show(watch.after.value)) +
                         words(fmt::format(" after the last heat; {}.", fire_rule_in_words(watch))));
    if (watch.periods.empty())
        return page + element("p", no_watch_by_the_clock());
    PageTable table{
        "When the fire is watched; write in when it was",
        {{"from", true}, {"until", true}, {"looks until", true}, {"lit"}, {"last heat"}, {"left"}}};
    table.kind = "day";
    for (std::size_t i = 0; i < watch.periods.size(); ++i) {
        const WatchPeriod& period = watch.periods[i];
        const auto at = [&](std::string_view name, Time time) {
            return figure(fmt::format("fire_watch.periods[{}].{}", i, name),
                          day_and_clock(plan.day->calendar, time), Shown::clock);
        };
        table.rows.push_back({at("from_s", period.from),
                              at("until_s", period.until),
                              at("looked_until_s", period.looked_until),
                              {},
                              {},
                              {}});
    }
    return page + written(table) +
           element("p", figure("fire_watch.total_s", show(watch.total)) + words(" ") +
                            words(watch_moves_with_the_heat()));
}

} // namespace ringfill
