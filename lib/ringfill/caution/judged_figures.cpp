#include <algorithm>

#include <fmt/format.h>

#include <ringfill/caution/judged.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A length over a metre, a volume of a room: to as many digits as a person measures them.
std::string figure_text(Circumstance what, double figure, UnitSystem units) {
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

/// "the arc has 150 A, from 60 A to under 160 A"
std::string compared(const Trigger& trigger, std::string_view what, double figure, UnitSystem units) {
    const auto in_words = [&](double one) { return figure_text(trigger.circumstance, one, units); };
    std::string text = fmt::format("{} {}", what, in_words(figure));
    if (trigger.from)
        text += fmt::format(", {} {}", trigger.under ? "from" : "at least", in_words(trigger.from->value));
    if (trigger.under)
        text += fmt::format("{} under {}", trigger.from ? " to" : ",", in_words(trigger.under->value));
    return text;
}

Judged figure_of_site(const Trigger& trigger, const std::optional<double>& figure, std::string_view what,
                      UnitSystem units) {
    if (!figure)
        return unknown_because(trigger);
    return trigger.holds(*figure) ? Judged{Answer::yes, {}, compared(trigger, what, *figure, units)}
                                  : Judged{};
}

/// A figure of each bore or procedure, told with the highest that holds.
template <class Each, class FigureOf>
Judged any_figure(const Trigger& trigger, const std::vector<Each>& all, std::size_t everyone,
                  FigureOf figure_of, std::string_view what, UnitSystem units) {
    std::optional<double> worst;
    Judged found = any_of(trigger, all, everyone, [&](const Each& one) -> std::optional<bool> {
        const std::optional<double> figure = figure_of(one);
        if (figure && trigger.holds(*figure))
            worst = std::max(worst.value_or(*figure), *figure);
        return figure ? std::optional(trigger.holds(*figure)) : std::nullopt;
    });
    if (worst)
        found.because = compared(trigger, what, *worst, units);
    return found;
}

/// A room has walls and a ceiling only under a roof.
Judged of_room(const Trigger& trigger, const std::optional<double>& figure, std::string_view what,
               const WorkFacts& facts) {
    return !figure && facts.site.indoors == false ? Judged{}
                                                  : figure_of_site(trigger, figure, what, facts.units);
}

std::optional<double> in_degrees(const std::optional<Temperature>& temperature) {
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
    return any_figure(
        trigger, of_that_kind, facts.procedures.size(),
        [](const ProcedureFacts& one) { return in_si_units(one.current); }, "the arc has", facts.units);
}

} // namespace

Judged judged_figure(const Trigger& trigger, const WorkFacts& facts) {
    using enum Circumstance;
    const auto of_bores = [&](auto figure_of, std::string_view what) {
        return any_figure(trigger, facts.bores, facts.bores.size(), figure_of, what, facts.units);
    };
    // What is known already decides where it is enough; else a metal that is not known leaves it open.
    const auto of_metal = [&](MetalShare MetalFacts::*element, std::string_view what) {
        return of_bores(
            [&](const BoreFacts& bore) {
                const MetalShare& share = bore.metal.*element;
                return share.is_whole || trigger.holds(share.most) ? std::optional(share.most) : std::nullopt;
            },
            what);
    };
    switch (trigger.circumstance) {
    case room_volume:
        return of_room(trigger, in_si_units(facts.site.room_volume), "a room of", facts);
    case ceiling:
        return of_room(trigger, in_si_units(facts.site.ceiling), "a ceiling of", facts);
    case ambient:
        return figure_of_site(trigger, in_degrees(facts.site.ambient), "the site has", facts.units);
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
        return of_metal(&MetalFacts::manganese, "filler or metal hold Mn of");
    case chromium:
        return of_metal(&MetalFacts::chromium, "filler or metal hold Cr of");
    case nickel:
        return of_metal(&MetalFacts::nickel, "filler or metal hold Ni of");
    case copper:
        return of_metal(&MetalFacts::copper, "filler or metal hold Cu of");
    default:
        return {};
    }
}

} // namespace ringfill
