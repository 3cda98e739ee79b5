#include <ringfill/caution/judged_figures.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A length over a metre, a volume of a room: to as many digits as a person measures them.
std::string told(Circumstance what, double figure, UnitSystem units) {
    using enum Circumstance;
    const bool metric = units == UnitSystem::metric;
    switch (what) {
    case room_volume:
        return metric ? fmt::format("{:.0f} m³", figure)
                      : fmt::format("{:.0f} ft³", figure / factor::cubic_foot);
    case ceiling:
        return metric ? fmt::format("{:.3g} m", figure) : fmt::format("{:.3g} ft", figure / factor::foot);
    case ambient:
    case preheat:
    case peak:
        return show_exact(celsius(figure), units);
    case wire_current:
    case stick_current:
    case rod_current:
        return fmt::format("{:.4g} A", figure);
    default:
        return fmt::format("{:.3g} %", figure);
    }
}

/// "150 A, from 60 A to under 160 A"
std::string compared(const Trigger& trigger, double figure, UnitSystem units) {
    std::string text = told(trigger.circumstance, figure, units);
    if (trigger.from)
        text += fmt::format(", {} {}", trigger.under ? "from" : "at least",
                            told(trigger.circumstance, trigger.from->value, units));
    if (trigger.under)
        text += fmt::format("{} under {}", trigger.from ? " to" : ",",
                            told(trigger.circumstance, trigger.under->value, units));
    return text;
}

Judged figure_of_site(const Trigger& trigger, const std::optional<double>& figure, std::string_view what,
                      const WorkFacts& facts) {
    if (!figure)
        return unknown_because(trigger);
    if (!trigger.holds(*figure))
        return {};
    return {Answer::yes, {}, fmt::format("{} {}", what, compared(trigger, *figure, facts.units))};
}

/// A figure of each bore or procedure: any that holds makes it so, else any that is not known leaves it open.
template <class Each, class FigureOf>
Judged any_of(const Trigger& trigger, const std::vector<Each>& all, FigureOf figure_of, std::string_view what,
              UnitSystem units) {
    Judged found;
    double worst = 0;
    std::vector<std::string> open;
    for (const Each& one : all) {
        const std::optional<double> figure = figure_of(one);
        if (!figure)
            open.push_back(one.name);
        else if (trigger.holds(*figure)) {
            worst = found.about.empty() ? *figure : std::max(worst, *figure);
            found.about.push_back(one.name);
        }
    }
    if (!found.about.empty()) {
        found.answer = Answer::yes;
        found.because = fmt::format("{} {}", what, compared(trigger, worst, units));
        found.open = open;
    } else if (!open.empty()) {
        found = unknown_because(trigger);
        found.about = open;
    }
    if (found.about.size() == all.size())
        found.about.clear();
    return found;
}

/// A room has walls and a ceiling only under a roof.
Judged of_room(const Trigger& trigger, const std::optional<double>& figure, std::string_view what,
               const WorkFacts& facts) {
    if (!figure && facts.site.indoors && !*facts.site.indoors)
        return {};
    return figure_of_site(trigger, figure, what, facts);
}

template <class Quantity>
std::optional<double> in_degrees(const std::optional<Quantity>& temperature) {
    return temperature ? std::optional(deg_c(*temperature)) : std::nullopt;
}

template <class Quantity>
std::optional<double> in_si_units(const std::optional<Quantity>& quantity) {
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

/// The current of the procedures with one kind of arc: each has filter shades of its own.
Judged of_arcs(const Trigger& trigger, const WorkFacts& facts, Arc arc) {
    std::vector<ProcedureFacts> of_that_kind;
    for (const ProcedureFacts& one : facts.procedures)
        if (one.arc == arc)
            of_that_kind.push_back(one);
    Judged found = any_of(
        trigger, of_that_kind, [](const ProcedureFacts& one) { return in_si_units(one.current); },
        "the arc has", facts.units);
    if (found.about.empty() && found.answer != Answer::no && of_that_kind.size() < facts.procedures.size())
        for (const ProcedureFacts& one : of_that_kind)
            found.about.push_back(one.name);
    return found;
}

} // namespace

Judged judged_figure(const Trigger& trigger, const WorkFacts& facts) {
    using enum Circumstance;
    const auto of_bores = [&](auto figure_of, std::string_view what) {
        return any_of(trigger, facts.bores, figure_of, what, facts.units);
    };
    // What is known already decides where it is enough; else a metal that is not known leaves it open.
    const auto share = [&](const MetalShare& metal) {
        return metal.is_whole || trigger.holds(metal.most) ? std::optional(metal.most) : std::nullopt;
    };
    switch (trigger.circumstance) {
    case room_volume:
        return of_room(trigger, in_si_units(facts.site.room_volume), "a room of", facts);
    case ceiling:
        return of_room(trigger, in_si_units(facts.site.ceiling), "a ceiling of", facts);
    case ambient:
        return figure_of_site(trigger, in_degrees(facts.site.ambient), "the site has", facts);
    case wire_current:
        return of_arcs(trigger, facts, Arc::wire);
    case stick_current:
        return of_arcs(trigger, facts, Arc::stick);
    case rod_current:
        return of_arcs(trigger, facts, Arc::rod);
    case preheat:
        return of_bores([](const BoreFacts& one) { return in_degrees(one.preheat); }, "the preheat is");
    case peak:
        return of_bores([](const BoreFacts& one) { return in_degrees(one.peak); }, "the boss gets to");
    case manganese:
        return of_bores([&](const BoreFacts& one) { return share(one.metal.manganese); },
                        "filler or metal hold Mn of");
    case chromium:
        return of_bores([&](const BoreFacts& one) { return share(one.metal.chromium); },
                        "filler or metal hold Cr of");
    case nickel:
        return of_bores([&](const BoreFacts& one) { return share(one.metal.nickel); },
                        "filler or metal hold Ni of");
    case copper:
        return of_bores([&](const BoreFacts& one) { return share(one.metal.copper); },
                        "filler or metal hold Cu of");
    default:
        return {};
    }
}

} // namespace ringfill
