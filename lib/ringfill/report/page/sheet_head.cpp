#include <ringfill/report/page/sheet_head.hpp>

#include <fmt/format.h>

#include <ringfill/day/clock.hpp>
#include <ringfill/report/page/figure.hpp>
#include <ringfill/report/page/page_table.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/heat_head.hpp>
#include <ringfill/report/text/take_text.hpp>

namespace ringfill {
namespace {

/// More pieces than this are not all laid out by the clock on the first page.
constexpr std::size_t most_pieces_listed = 24;

Markup tick(const std::string& what) {
    return element("span", Markup(),
                   {{"class", "tick"}, {"role", "img"}, {"aria-label", "box to tick: " + what}});
}

/// The wire stands in kilograms or pounds, pieces as a number: the unit of the result's figure.
Markup amount_of(double value, const Need& need, const std::string& path, UnitSystem units) {
    return element("span", amount(value, need, units), {{"data-figure", path}, {"data-unit", need.unit}});
}

/// Wire by its mass, electrodes and rods by their number.
Markup filler_in_all(const Plan& plan) {
    Markup told;
    if (plan.totals.wire > Mass())
        told = figure("totals.wire_kg", show(plan.totals.wire, plan.units)) + words(" of wire");
    if (plan.totals.pieces > 0)
        told += words(told.empty() ? "" : ", ") +
                figure("totals.pieces", fmt::format("{}", plan.totals.pieces)) + words(" electrodes or rods");
    return told;
}

Markup bores_in_brief(const Plan& plan) {
    const UnitSystem units = plan.units;
    PageTable table{"Bores",
                    {{"bore"},
                     {"pieces", true},
                     {"skim to", true},
                     {"weld to", true},
                     {"layers × rings", true},
                     {plan.totals.pieces > 0 ? "filler each" : "wire each", true},
                     {"arc each", true}}};
    table.wide = true;
    for (std::size_t i = 0; i < plan.bores.size(); ++i) {
        const BorePlan& bore = plan.bores[i];
        const auto at = [&](std::string_view name) { return fmt::format("bores[{}].{}", i, name); };
        const std::string last = fmt::format("layers[{}].radius_after_mm", bore.layers.size() - 1);
        table.rows.push_back(
            {as_told(at("name"), bore.name), figure(at("count"), fmt::format("{}", bore.count)),
             bore.build.skimmed
                 ? figure(at("build.skim_diameter_mm"), show(2.0 * bore.build.skim_radius, units))
                 : words("none"),
             figure(at(last), show(2.0 * bore.layers.back().radius_after, units), Shown::twice),
             figure(at("layers"), fmt::format("{}", bore.layers.size()), Shown::count) + words(" × ") +
                 figure(at("layers[0].rings"), fmt::format("{}", bore.layers.front().rings)),
             filler_figure(fmt::format("bores[{}].metal", i), bore, units),
             figure(at("metal.arc_s"), show(bore.metal.arc))});
    }
    return written(table);
}

/// Ways to the parts of the page, for a screen.
Markup contents(const Plan& plan) {
    Markup list;
    const auto way = [&](const std::string& id, std::string_view name) {
        list += element("li", element("a", name, {{"href", "#" + id}}));
    };
    way("take", "Take");
    if (plan.day)
        way("day", "Day");
    way("fire-watch", "Fire watch");
    way("cautions", "Cautions");
    for (std::size_t i = 0; i < plan.bores.size(); ++i)
        way(fmt::format("bore-{}", i + 1), plan.bores[i].name);
    way("sources", "Sources");
    way("notes", "Notes");
    way("working", "Working");
    return element("nav", element("ul", list), {{"aria-label", "Parts of this page"}});
}

} // namespace

Markup sheet_head(const Plan& plan) {
    int bores = 0;
    for (const BorePlan& bore : plan.bores)
        bores += bore.count;
    return element("h1", "Hot-work notes, not a permit") +
           element("p", as_told("title", plan.title), {{"class", "job"}}) +
           element("p",
                   "Reckoned from one job file. These notes give nobody leave to begin hot work and are no "
                   "welding procedure: the permit, the fire watch and the approved procedure come from those "
                   "who answer for the place and the part.") +
           element("p",
                   words(fmt::format("{} {} · ", bores, bores == 1 ? "bore" : "bores")) +
                       filler_in_all(plan) + words(" · ") + figure("totals.arc_s", show(plan.totals.arc)) +
                       words(" of arc"),
                   {{"class", "sum"}}) +
           paragraphs(head_sentences(plan), "") + bores_in_brief(plan) + contents(plan);
}

Markup sheet_take(const Plan& plan) {
    PageTable table{"What to load", {{"what"}, {"need", true}, {"on top", true}, {"load"}}};
    table.kind = "take";
    for (std::size_t i = 0; i < plan.take.size(); ++i) {
        const Need& need = plan.take[i];
        const std::string path = fmt::format("take[{}]", i);
        table.rows.push_back({tick(need.item) + as_told(path + ".item", need.item),
                              amount_of(need.need, need, path + ".need", plan.units),
                              amount_of(need.reserve, need, path + ".reserve", plan.units),
                              need.unit == "pieces" && need.pack_known && need.cover.empty()
                                  ? figure(path + ".supplied", load(need))
                                  : element("span", load(need), {{"data-cover", path + ".cover"}})});
    }
    return element("h2", "Take", {{"id", "take"}}) + written(table);
}

Markup sheet_day(const Plan& plan) {
    if (!plan.day)
        return element("p", "The day is not laid out by the clock; the notes say why.");
    const Markup heading = element("h2", "The day by the clock", {{"id", "day"}});
    const DayPlan& day = *plan.day;
    PageTable table{
        "When each piece is begun and ended",
        {{"piece"}, {"torch on", true}, {"last ring", true}, {"roughing", true}, {"finishing", true}}};
    table.kind = "day";
    std::size_t left = 0;
    const auto at = [&](std::size_t entry, bool ends) {
        const DayEntry& one = day.day.entries[entry];
        return figure(fmt::format("day.steps[{}].{}", entry, ends ? "to_s" : "from_s"),
                      day_and_clock(day.calendar, ends ? one.to : one.from), Shown::clock);
    };
    for (const BorePlan& bore : plan.bores)
        for (const PieceClock& piece : piece_clocks(day.day, bore)) {
            if (table.rows.size() == most_pieces_listed) {
                ++left;
                continue;
            }
            table.rows.push_back({words(piece.name), at(piece.torch, false), at(piece.last_ring, true),
                                  at(piece.rough, false), at(piece.finish, false)});
        }
    Markup more;
    if (left > 0)
        more = element("p", fmt::format("{} pieces more; the day view has them all.", left));
    return heading + written(table) + more + paragraphs(day_sentences(day), "");
}

} // namespace ringfill
