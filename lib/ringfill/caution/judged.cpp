#include <ringfill/caution/judged.hpp>

#include <algorithm>
#include <type_traits>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A figure as people measure it. @param name of the circumstance, which ends in the unit of the figure.
std::string figure_text(std::string_view name, double figure, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    if (name.ends_with("_degC"))
        return show_exact(celsius(figure), units);
    if (name.ends_with("_A"))
        return fmt::format("{:.4g} A", figure);
    if (name.ends_with("_pct"))
        return fmt::format("{:.3g} %", figure);
    if (name.ends_with("_m3"))
        return metric ? fmt::format("{:.0f} m³", figure)
                      : fmt::format("{:.0f} ft³", figure / factor::cubic_foot);
    return metric ? fmt::format("{:.3g} m", figure) : fmt::format("{:.3g} ft", figure / factor::foot);
}

std::optional<double> in_degrees(const std::optional<Temperature>& temperature) {
    return temperature ? std::optional(deg_c(*temperature)) : std::nullopt;
}

template <class Quantity>
std::optional<double> in_si_units(const std::optional<Quantity>& quantity) {
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

Judged it_holds(bool holds, std::string because) {
    return holds ? Judged{Answer::yes, {}, std::move(because)} : Judged{};
}

/// Judges one trigger by what is known of the work.
struct Judge {
    const Trigger& trigger;
    const WorkFacts& facts;
    const CircumstanceWord& word;

    /// What is left open because a field of the job is absent.
    Judged unknown() const {
        return {Answer::unknown, {}, fmt::format("the job does not say: {}", word.field)};
    }

    /// Whether a list of the site has it, by its own name or, for grease, as oil.
    Judged listed(const std::optional<std::vector<std::string>>& list) const {
        if (!list)
            return unknown();
        const std::string_view near = "near_";
        const std::string_view name = word.name.substr(word.name.starts_with(near) ? near.size() : 0);
        for (const std::string_view one : {name, name == "grease" ? "oil" : name})
            if (ranges::find(*list, one) != list->end())
                return it_holds(true, fmt::format("the job names {} in {}", one, word.field));
        return {};
    }

    Judged said(const std::optional<bool>& flag) const {
        const bool wanted = trigger.circumstance != Circumstance::outdoors;
        return flag ? it_holds(*flag == wanted, fmt::format("the job says {} is {}", word.field, *flag))
                    : unknown();
    }

    Judged coating() const {
        const bool zinc = trigger.circumstance == Circumstance::zinc_coated;
        const auto& coating = facts.site.coating;
        if (!coating)
            return unknown();
        if (*coating == "unknown")
            return {zinc ? Answer::unknown : Answer::yes, {}, "nobody knows the coating"};
        return it_holds(zinc ? *coating == "zinc" : *coating != "none",
                        fmt::format("the coating is {}", *coating));
    }

    /// Whether a fuel that fits is burnt. A heater that is only assumed leaves the others open.
    Judged fuel() const {
        using enum Circumstance;
        const Circumstance what = trigger.circumstance;
        if (!facts.fuels || (what == electric_heater && facts.fuel_is_assumed))
            return unknown();
        if (what == electric_heater)
            return it_holds(facts.fuels->empty(), "the heater is electric");
        for (const auto& [name, takes_oxygen] : *facts.fuels)
            if (what == fuel_gas || (what == oxygen ? takes_oxygen : name == word.name))
                return it_holds(
                    true, fmt::format("{} {}{}", name,
                                      what == oxygen ? "burns with oxygen from cylinders" : "heats the boss",
                                      facts.fuel_is_assumed ? ", assumed: the job names no heater" : ""));
        return facts.fuel_is_assumed ? unknown() : Judged{};
    }

    /// "the arc has 150 A, from 60 A to under 160 A"
    std::string compared(std::string_view what, double figure) const {
        const auto in_words = [&](double one) { return figure_text(word.name, one, facts.units); };
        std::string text = fmt::format("{} {}", what, in_words(figure));
        if (trigger.from)
            text +=
                fmt::format(", {} {}", trigger.under ? "from" : "at least", in_words(trigger.from->value));
        if (trigger.under)
            text += fmt::format("{} under {}", trigger.from ? " to" : ",", in_words(trigger.under->value));
        return text;
    }

    Judged of_site(const std::optional<double>& figure, std::string_view what) const {
        if (!figure)
            return unknown();
        return it_holds(trigger.holds(*figure), compared(what, *figure));
    }

    /// A room has walls and a ceiling only under a roof.
    Judged of_room(const std::optional<double>& figure, std::string_view what) const {
        return !figure && facts.site.indoors == false ? Judged{} : of_site(figure, what);
    }

    /// Judges bores or procedures: any that holds makes it so, else any that is not known leaves it open. The
    /// job is meant where it is all of them.
    /// @param holds tells whether it holds for one; nothing: not known. @param everyone how many there are.
    template <class Each, class Holds>
    Judged any(const std::vector<Each>& all, std::size_t everyone, std::string because, Holds holds) const {
        constexpr bool is_bore = std::is_same_v<Each, BoreFacts>;
        Judged found;
        for (const Each& one : all)
            if (const std::optional<bool> it = holds(one); it.value_or(true))
                (it ? found.about : found.open)
                    .push_back({is_bore ? Concern::bore : Concern::procedure, one.name});
        if (!found.about.empty())
            found = {Answer::yes, std::move(found.about), std::move(because), std::move(found.open)};
        else if (!found.open.empty())
            found = {Answer::unknown, std::move(found.open), unknown().because};
        if (found.about.size() == everyone)
            found.about.clear();
        return found;
    }

    /// A figure of each, told with the highest that holds.
    template <class Each, class FigureOf>
    Judged any_figure(const std::vector<Each>& all, std::size_t everyone, std::string_view what,
                      FigureOf figure_of) const {
        std::optional<double> worst;
        Judged found = any(all, everyone, {}, [&](const Each& one) -> std::optional<bool> {
            const std::optional<double> figure = figure_of(one);
            if (figure && trigger.holds(*figure))
                worst = std::max(worst.value_or(*figure), *figure);
            return figure ? std::optional(trigger.holds(*figure)) : std::nullopt;
        });
        if (worst)
            found.because = compared(what, *worst);
        return found;
    }
    template <class FigureOf>
    Judged of_bores(std::string_view what, FigureOf figure_of) const {
        return any_figure(facts.bores, facts.bores.size(), what, figure_of);
    }

    /// The current of the procedures with one kind of arc: each has filter shades of its own.
    Judged current() const {
        using enum Circumstance;
        constexpr Circumstance currents[] = {wire_current, stick_current, rod_current};
        std::vector<ProcedureFacts> of_that_kind;
        for (const ProcedureFacts& one : facts.procedures)
            if (currents[static_cast<std::size_t>(one.arc)] == trigger.circumstance)
                of_that_kind.push_back(one);
        return any_figure(of_that_kind, facts.procedures.size(), "the arc has",
                          [](const ProcedureFacts& one) { return in_si_units(one.current); });
    }

    /// What is known already decides where it is enough; else a metal that is not known leaves it open.
    Judged metal() const {
        const std::string_view symbol = ranges::find(elements, trigger.circumstance, &Element::id)->symbol;
        return of_bores(fmt::format("filler or metal hold {} of", symbol), [&](const BoreFacts& bore) {
            const auto& [most, is_whole] = bore.metal.at(trigger.circumstance);
            return is_whole || trigger.holds(most) ? std::optional(most) : std::nullopt;
        });
    }

    /// Whether a hole of a bore is shut at its far end too; what the job does not say of one is not told.
    Judged plugged_passage() const {
        Judged shut =
            any(facts.bores, facts.bores.size(),
                "a hole that is plugged for the weld is shut at its far end too", [](const BoreFacts& bore) {
                    std::optional<bool> is_shut = false;
                    for (const Hole& hole : bore.holes)
                        if (!hole.other_end && is_shut == false)
                            is_shut = std::nullopt;
                        else if (hole.other_end && *hole.other_end != "open")
                            is_shut = true;
                    return is_shut;
                });
        shut.open.clear();
        return shut;
    }

    /// What the plan itself decides, whatever the job says.
    Judged of_plan() const {
        using enum Circumstance;
        const auto procedures = [&](std::string because, bool ProcedureFacts::*flag) {
            return any(facts.procedures, facts.procedures.size(), std::move(because),
                       [&](const ProcedureFacts& one) { return one.*flag; });
        };
        switch (trigger.circumstance) {
        case shielding_gas:
            return procedures("the arc burns under shielding gas", &ProcedureFacts::shielding_gas);
        case flux:
            return procedures("the filler carries a flux", &ProcedureFacts::flux);
        case delayed_cracks:
            return any(facts.bores, facts.bores.size(), "the rules of the metal ask for a wait",
                       [](const BoreFacts& one) { return one.delayed_cracks; });
        default:
            return it_holds(true, "on every job");
        }
    }
};

/// How a field of the job settles the circumstances that hang on it.
struct BySettlingField {
    std::string_view field;
    Judged (*judge)(const Judge& by);
};

constexpr BySettlingField by_field[] = {
    {"", [](const Judge& by) { return by.of_plan(); }},
    {"site.near", [](const Judge& by) { return by.listed(by.facts.site.near); }},
    {"site.residue", [](const Judge& by) { return by.listed(by.facts.site.residue); }},
    {"site.crew", [](const Judge& by) { return by.listed(by.facts.site.crew); }},
    {"site.wet", [](const Judge& by) { return by.said(by.facts.site.wet); }},
    {"site.indoors", [](const Judge& by) { return by.said(by.facts.site.indoors); }},
    {"site.enclosed", [](const Judge& by) { return by.said(by.facts.site.enclosed); }},
    {"site.coating", [](const Judge& by) { return by.coating(); }},
    {"heater.kind", [](const Judge& by) { return by.fuel(); }},
    {"site.room_volume",
     [](const Judge& by) { return by.of_room(in_si_units(by.facts.site.room_volume), "a room of"); }},
    {"site.ceiling",
     [](const Judge& by) { return by.of_room(in_si_units(by.facts.site.ceiling), "a ceiling of"); }},
    {"site.ambient",
     [](const Judge& by) { return by.of_site(in_degrees(by.facts.site.ambient), "the site has"); }},
    {"procedures.current", [](const Judge& by) { return by.current(); }},
    {"bores.base",
     [](const Judge& by) {
         return by.of_bores("the preheat is", [](const BoreFacts& one) { return in_degrees(one.preheat); });
     }},
    {"bores.boss_diameter, procedures.current and voltage",
     [](const Judge& by) {
         return by.of_bores("the boss gets to", [](const BoreFacts& one) { return in_degrees(one.peak); });
     }},
    {"bores.composition", [](const Judge& by) { return by.metal(); }},
    {"bores.holes.other_end", [](const Judge& by) { return by.plugged_passage(); }},
};

} // namespace

Judged judged(const Trigger& trigger, const WorkFacts& facts) {
    const CircumstanceWord& word = word_of(trigger.circumstance);
    return ranges::find(by_field, word.field, &BySettlingField::field)->judge({trigger, facts, word});
}

} // namespace ringfill
