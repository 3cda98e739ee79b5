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
constexpr std::size_t most_pieces_listed = 24;

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
    PageTable table{.caption = "Bores",
                    .heads = {"bore", "pieces", "skim to", "weld to", "layers × rings",
                              plan.totals.pieces > 0 ? "filler each" : "wire each", "arc each"},
                    .numbers = {1, 7},
                    .wide = true};
    for (std::size_t i = 0; i < plan.bores.size(); ++i) {
        const BorePlan& bore = plan.bores[i];
        const Part in = Part{"", plan.units}.in("bores", i);
        table.add(in.text("name", bore.name), in.figure("count", bore.count), skim_figure(in, bore, "none"),
                  weld_figure(in, bore), layers_figure(in, bore), filler_figure(in, bore),
                  in.figure("metal.arc_s", bore.metal.arc));
    }
    return written(table);
}

/// Links to the parts of the page, for a screen.
Markup contents(const Plan& plan) {
    Markup list;
    const auto link = [&](const std::string& id, std::string_view name) {
        list += element("li", element("a", name, {{"href", "#" + id}}));
    };
    link("take", "Take");
    if (plan.day)
        link("day", "Day");
    link("fire-watch", "Fire watch");
    link("cautions", "Cautions");
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        link(fmt::format("bore-{}", i + 1), plan.bores[i].name);
    link("sources", "Sources");
    link("notes", "Notes");
    link("working", "Working");
    return element("nav", element("ul", list), {{"aria-label", "Parts of this page"}});
}

} // namespace

Markup sheet_head(const Plan& plan) {
    const Part job{"", plan.units};
    return element("h1", "Hot-work notes, not a permit") +
           element("p", job.text("title", plan.title), {{"class", "job"}}) +
           element("p",
                   "Reckoned from one job file. These notes give nobody leave to begin hot work and are no "
                   "welding procedure: the permit, the fire watch and the approved procedure come from those "
                   "who answer for the place and the part.") +
           element("p",
                   bores_in_all(plan) + " · " + filler_in_all(plan) + " · " +
                       job.figure("totals.arc_s", plan.totals.arc) + " of arc",
                   {{"class", "sum"}}) +
           paragraphs(head_sentences(plan), "") + bores_in_brief(plan) + contents(plan);
}

Markup sheet_take(const Plan& plan) {
    PageTable table{.caption = "What to load",
                    .heads = {"what", "need", "on top", "load"},
                    .numbers = {1, 3},
                    .kind = "take"};
    for (std::size_t i = 0; i < plan.take.size(); ++i) {
        const Need& need = plan.take[i];
        const Part in = Part{"", plan.units}.in("take", i);
        const std::string item = item_text(need, plan.units);
        // The wire stands in kilograms or pounds, pieces as a number: the unit of the result's figure.
        const auto amount_of = [&](std::string_view name, double value) {
            return element(
                "span", amount(value, need, plan.units),
                {{"data-figure", in.at(std::string(name))}, {"data-unit", unit_text(unit_of(need.kind))}});
        };
        table.add(tick_box("box to tick: " + item) + in.text("item", item), amount_of("need", need.need),
                  amount_of("reserve", need.reserve),
                  comes_singly(need) ? in.figure("supplied", load(need))
                                     : element("span", load(need), {{"data-cover", in.at("cover")}}));
    }
    return element("h2", "Take", {{"id", "take"}}) + written(table);
}

Markup sheet_day(const Plan& plan) {
    if (!plan.day)
        return element("p", "The day is not laid out by the clock; the notes say why.");
    const DayPlan& day = *plan.day;
    PageTable table{.caption = "When each piece is begun and ended",
                    .heads = {"piece", "torch on", "last ring", "roughing", "finishing"},
                    .numbers = {1, 5},
                    .kind = "day"};
    std::size_t left = 0;
    const auto at = [&](std::size_t entry, bool ends) {
        const DayEntry& step = day.day.entries[entry];
        return Part{"day", plan.units}
            .in("steps", entry)
            .figure(ends ? "to_s" : "from_s", day_and_clock(day.calendar, ends ? step.to : step.from),
                    Shown::clock);
    };
    for (const BorePlan& bore : plan.bores)
        for (const PieceClock& piece : piece_clocks(day.day, bore))
            if (table.rows.size() == most_pieces_listed)
                ++left;
            else
                table.add(piece.name, at(piece.torch, false), at(piece.last_ring, true),
                          at(piece.rough, false), at(piece.finish, false));
    Markup more;
    if (left > 0)
        more = element("p", fmt::format("{} pieces more; the day view has them all.", left));
    return element("h2", "The day by the clock", {{"id", "day"}}) + written(table) + more +
           paragraphs(day_sentences(day), "");
}

Markup sheet_fire_watch(const Plan& plan) {
    const FireWatch& watch = plan.fire_watch;
    const Part in{"fire_watch", plan.units};
    const auto [begin, end] = who_watches(watch);
    const Markup page = element("h2", "Fire watch", {{"id", "fire-watch"}}) +
                        element("p", begin + in.figure("after_s", watch.after.value) + end);
    if (watch.periods.empty())
        return page + element("p", no_watch_by_the_clock);
    PageTable table{.caption = "When the fire is watched; write in when it was",
                    .heads = {"from", "until", "looks until", "lit", "last heat", "left"},
                    .numbers = {0, 3},
                    .kind = "day"};
    for (std::size_t i = 0; i < watch.periods.size(); ++i) {
        const auto at = [&](const std::string& name, Time time) {
            return in.in("periods", i).figure(name, day_and_clock(plan.day->calendar, time), Shown::clock);
        };
        const WatchPeriod& period = watch.periods[i];
        table.add(at("from_s", period.from), at("until_s", period.until),
                  at("looked_until_s", period.looked_until), "", "", "");
    }
    return page + written(table) +
           element("p", in.figure("total_s", watch.total) + " " + watch_moves_with_the_heat);
}

} // namespace ringfill
