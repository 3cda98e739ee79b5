#include <ringfill/report/page/sheet_parts.hpp>

#include <fmt/format.h>

#include <ringfill/day/calendar.hpp>
#include <ringfill/say/cautions.hpp>
#include <ringfill/say/day_sentences.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/take_words.hpp>

namespace ringfill {
namespace {

/// More pieces than this are not all laid out by the clock on the first page.
constexpr std::size_t most_listed = 24;

/// Wire by its mass, electrodes and rods by their number.
Markup filler_in_all(const Plan& plan) {
    const Part totals{"totals", plan.units};
    Markup filler;
    if (plan.totals.wire > Mass())
        filler = totals.figure("wire_kg", plan.totals.wire) + " of wire";
    if (plan.totals.pieces > 0)
        filler += (filler.empty() ? "" : ", ") + totals.figure("pieces", plan.totals.pieces) +
                  " electrodes or rods";
    return filler;
}

Markup bores_in_brief(const Plan& plan) {
    PageTable table = table_of("Bores", "wide",
                               {"bore", "pieces", "skim to", "weld to", "layers × rings",
                                plan.totals.pieces > 0 ? "filler each" : "wire each", "arc each"},
                               {1, 7});
    table.add_list(result_of(plan), "bores", plan.bores, [](const Part& in, const BorePlan& bore, auto) {
        return row(in.text("name", bore.name), in.figure("count", bore.count), skim_figure(in, bore, "none"),
                   weld_figure(in, bore), layers_figure(in, bore), filler_figure(in, bore),
                   in.figure("metal.arc_s", bore.metal.arc));
    });
    return written(table);
}

/// Links to the parts of the page, for a screen.
Markup contents(const Plan& plan) {
    std::vector<std::pair<std::string, std::string_view>> parts{{"take", "Take"}};
    if (plan.day)
        parts.emplace_back("day", "Day");
    parts.insert(parts.end(), {{"fire-watch", "Fire watch"}, {"cautions", "Cautions"}});
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        parts.emplace_back(fmt::format("bore-{}", i + 1), plan.bores[i].name);
    parts.insert(parts.end(), {{"sources", "Sources"}, {"notes", "Notes"}, {"working", "Working"}});
    const auto link_at = [&](std::size_t i) {
        return element("li", element("a", parts[i].second, {{"href", "#" + parts[i].first}}));
    };
    return element("nav", element("ul", each(parts.size(), link_at)), {{"aria-label", "Parts of this page"}});
}

} // namespace

Markup sheet_head(const Plan& plan) {
    const Part job = result_of(plan);
    return element("h1", "Hot-work notes, not a permit") +
           element("p", job.text("title", plan.title), {{"class", "job"}}) +
           element("p",
                   "Worked out from one job file. These notes give nobody leave to begin hot work and are no "
                   "welding procedure: the permit, the fire watch and the approved procedure come from those "
                   "who answer for the place and the part.") +
           element("p",
                   bores_in_all(plan) + " · " + filler_in_all(plan) + " · " +
                       job.figure("totals.arc_s", plan.totals.arc) + " of arc",
                   {{"class", "sum"}}) +
           paragraphs(head_sentences(plan)) + bores_in_brief(plan) + contents(plan);
}

Markup sheet_take(const Plan& plan) {
    PageTable table = table_of("What to load", "take", {"what", "need", "on top", "load"}, {1, 3});
    table.add_list(result_of(plan), "take", plan.take, [&](const Part& in, const Need& need, auto) {
        const std::string item = item_text(need, plan.units);
        // The wire stands in kilograms or pounds, pieces as a number: the unit of the result's figure.
        const auto amount_of = [&](const std::string& name, double value) {
            if (is_unknown(need))
                return element("span", amount(value, need, plan.units));
            return element("span", amount(value, need, plan.units),
                           {{"data-figure", in.at(name)}, {"data-unit", std::string(need.kind.unit)}});
        };
        return row(tick_box("box to tick: " + item) + in.text("item", item), amount_of("need", need.need),
                   amount_of("reserve", need.reserve),
                   comes_singly(need) ? in.figure("supplied", load(need))
                                      : element("span", load(need), {{"data-cover", in.at("cover")}}));
    });
    return heading("take", "Take") + written(table);
}

Markup sheet_day(const Plan& plan) {
    if (!plan.day)
        return element("p", "The day is not laid out by the clock; the notes say why.");
    const DayPlan& day = *plan.day;
    PageTable table = table_of("When each piece is begun and ended", "day",
                               {"piece", "torch on", "last ring", "roughing", "finishing"}, {1, 5});
    const auto at = [&](std::size_t entry, const std::string& name, Time DayEntry::*time) {
        const std::string clock = day_and_clock(day.calendar, day.day.entries[entry].*time);
        return result_of(plan).in("day").in("steps", entry).figure(name, clock, Shown::clock);
    };
    for (const BorePlan& bore : plan.bores)
        for (const PieceClock& piece : piece_clocks(day.day, bore))
            table.rows.push_back(row(piece.name, at(piece.torch, "from_s", &DayEntry::from),
                                     at(piece.last_ring, "to_s", &DayEntry::to),
                                     at(piece.rough, "from_s", &DayEntry::from),
                                     at(piece.finish, "from_s", &DayEntry::from)));
    Markup more;
    if (const std::size_t all = table.rows.size(); all > most_listed) {
        table.rows.resize(most_listed);
        more = element("p", fmt::format("{} pieces more; the day view has them all.", all - most_listed));
    }
    return heading("day", "The day by the clock") + written(table) + more + paragraphs(day_sentences(day));
}

Markup sheet_fire_watch(const Plan& plan) {
    const FireWatch& watch = plan.fire_watch;
    const Part result{"fire_watch", plan.units};
    const auto [begin, end] = who_watches(watch);
    const Markup page = heading("fire-watch", "Fire watch") +
                        element("p", begin + result.figure("after_s", watch.after.value) + end);
    if (watch.periods.empty())
        return page + element("p", no_watch_by_the_clock);
    PageTable table = table_of("When the fire is watched; write in when it was", "day",
                               {"from", "until", "looks until", "lit", "last heat", "left"}, {0, 3});
    table.add_list(result, "periods", watch.periods, [&](const Part& in, const WatchPeriod& period, auto) {
        const auto at = [&](const std::string& name, Time time) {
            return in.figure(name, day_and_clock(plan.day->calendar, time), Shown::clock);
        };
        return row(at("from_s", period.from), at("until_s", period.until),
                   at("looked_until_s", period.looked_until), "", "", "");
    });
    return page + written(table) +
           element("p", result.figure("total_s", watch.total) + " " + watch_moves_with_the_heat);
}

} // namespace ringfill
