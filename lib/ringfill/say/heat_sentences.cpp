#include <ringfill/say/heat_sentences.hpp>

#include <cmath>
#include <map>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::string noted(const PreheatMethod& method) {
    return method.note.empty() ? "" : fmt::format(" ({})", method.note);
}

/// @param waits nothing of it is done before the author of the approved procedure has confirmed it.
std::string minimum_sentence(const Preheat& preheat, UnitSystem units) {
    if (preheat.asked == PreheatState::needed_without_figure)
        return "Preheat: needed, and no method here says how much. It is never left out: take the "
               "figure from an approved procedure.";
    const AskedTemperature& asked = *preheat.minimum;
    if (preheat.asked == PreheatState::none)
        return fmt::format("Preheat: none, dry and hand-warm; no method here asks for more than {} [{}].",
                           show_exact(chill_off, units), asked.source);
    const auto rule = ranges::find(preheat.methods, true, &PreheatMethod::rules);
    return fmt::format("Preheat to at least {} before the first ring and hold it: asked by {} [{}]{}.",
                       shown_limits(preheat, units).minimum, asked.by, asked.source,
                       rule == preheat.methods.end() ? "" : noted(*rule));
}

std::string maximum_sentence(const Preheat& preheat, UnitSystem units) {
    return fmt::format("No ring begins over {}: {} [{}].{}", shown_limits(preheat, units).maximum,
                       preheat.interpass_max->by, preheat.interpass_max->source,
                       preheat.narrow ? " The window is narrow: read both with a contact thermometer." : "");
}

std::string later_sentence(const LaterLayers& later, UnitSystem units) {
    return fmt::format(
        "From the second layer on: not under {} [{}], and no ring begins over {} [{}]; let it cool to "
        "that before the second layer.",
        show_exact(later.minimum.value, units), later.minimum.source, show_exact(later.maximum.value, units),
        later.maximum.source);
}

std::string lowering_text(const Lowering& one) {
    switch (one.by) {
    case LoweredBy::certificate:
        return fmt::format(
            "a mill certificate that gives C, Mn, Cr, Mo, Ni, Cu and V, by {:.0f} K at most ({:.0f} K for "
            "each 0.01 % of CET)",
            one.kelvin, one.figure);
    case LoweredBy::drier_filler:
        return fmt::format("a filler of {:.3g} ml/100 g, by {:.0f} K", one.figure, one.kelvin);
    case LoweredBy::more_heat_input:
        return fmt::format("{:.3g} kJ/mm of heat input, by {:.0f} K", one.figure / 1e6, one.kelvin);
    }
    return {};
}

std::string rival_text(const PreheatMethod& method, UnitSystem units) {
    const bool has_range = method.range_from && !method.applies; // that does not count
    return fmt::format("{}{}{}{} [{}]", method.name,
                       has_range ? fmt::format(" {} to", show_exact(*method.range_from, units)) : "",
                       method.counts ? " " + show_exact(*method.counts, units) : "", noted(method),
                       method.source);
}

/// How a method stands to the one that rules, in the order of the sentences.
enum class Rival { higher, lower, without_figure, none, second_opinion, unusable };

constexpr std::string_view rival_words[] = {"Higher than what rules",
                                            "Lower or equal",
                                            "Asks for preheat without a figure",
                                            "Asks for none",
                                            "Second opinions, which do not rule",
                                            "Not usable here"}; // as Rival

Rival rival_of(const PreheatMethod& method, const Preheat& preheat) {
    if (method.asks == Asks::minimum)
        return !method.applies                    ? Rival::second_opinion
               : method.minimum > preheat.least() ? Rival::higher
                                                  : Rival::lower;
    return method.asks == Asks::unnamed ? Rival::without_figure
           : method.asks == Asks::none  ? Rival::none
                                        : Rival::unusable;
}

/// "Lower: …", "Ask for none: …" and so on: the methods beside the one that rules, one sentence a kind.
Sentences rivals(const Preheat& preheat, UnitSystem units) {
    std::map<Rival, std::vector<std::string>> texts;
    for (const PreheatMethod& method : preheat.methods)
        if (!method.rules)
            texts[rival_of(method, preheat)].push_back(rival_text(method, units));
    Sentences sentences;
    for (const auto& [rival, alike] : texts)
        sentences.push_back(
            {fmt::format("{}: {}.", rival_words[static_cast<std::size_t>(rival)], listed(alike, "; "))});
    return sentences;
}

/// A length to be kept by eye, rounded up: 77 mm, 3.0 in.
std::string about(Length length, UnitSystem units) {
    constexpr double rounding = 1e-9;
    return units == UnitSystem::metric
               ? fmt::format("{:.0f} mm", std::ceil(mm(length) - rounding))
               : fmt::format("{:.1f} in", std::ceil(mm(length) / 2.54 - rounding) / 10);
}

std::string heat_input_text(EnergyPerLength energy, UnitSystem units) {
    constexpr double mm_in_inch = 25.4;
    return units == UnitSystem::metric ? fmt::format("{:.3g} kJ/mm", kj_mm(energy))
                                       : fmt::format("{:.3g} kJ/in", kj_mm(energy) * mm_in_inch);
}

std::string measuring(const BoreHeat& heat, UnitSystem units) {
    if (!heat.wall)
        return fmt::format(
            "Measure {} or more from the edge of the weld, where no flame plays: the wall is not known, so "
            "take the flame away and wait for the heat to even out, 2 min for every {} of it [ISO13916].",
            about(thick_wall_distance, units), units == UnitSystem::metric ? "25 mm" : "inch");
    return fmt::format(
        "Measure {} from the edge of the weld, on the side away from the flame. Where only the heated side "
        "can be reached, take the flame away, wait {}, then read [ISO13916].{}",
        about(measuring_distance(*heat.wall), units),
        show(in_si<Time>(factor::minute * std::ceil(equalising_time(*heat.wall).value() / factor::minute))),
        heat.preheat.asked == PreheatState::none
            ? ""
            : fmt::format(" Heat {} or more each way from the weld [D1.1-zone].",
                          about(heated_zone(*heat.wall), units)));
}

std::string heat_inputs(const BoreHeat& heat, UnitSystem units) {
    if (heat.laid.empty())
        return "Heat input: not known without current and voltage.";
    const std::string laid = listed(heat.laid, ", ", [&](const LaidHeat& laid_heat) {
        return fmt::format("{} {}", laid_heat.pass, heat_input_text(laid_heat.heat_input, units));
    });
    const auto& cooling = heat.cooling;
    return fmt::format(
        "Heat input as laid: {} (thermal efficiency {:.1f}).{}", laid, heat.thermal_efficiency,
        !cooling
            ? ""
            : fmt::format(" From 800 to 500 °C in about {:.1f} s at the preheat, as information; the wall "
                          "counts as {}, over {} it is thick [EN1011-2-D].",
                          cooling->t85().value(), cooling->is_thick ? "thick" : "thin",
                          show(cooling->transition, units)));
}

std::string inputs_sentence(const BoreHeat& heat, UnitSystem units) {
    const std::string wall = heat.wall ? fmt::format("a wall of {}{}", show(*heat.wall, units),
                                                     heat.wall_is_given ? " as the job says" : "")
                                       : "the thickest wall";
    const auto& hydrogen = heat.hydrogen_ml_100g;
    return fmt::format("Worked out with {}, {} restraint, {}.", wall,
                       heat.restraint == Restraint::high ? "high" : "medium",
                       hydrogen ? fmt::format("hydrogen {} {:.3g} ml/100 g [{}]",
                                              heat.hydrogen_is_measured  ? "measured at"
                                              : heat.hydrogen_is_assumed ? "of no class, taken as"
                                                                         : "up to",
                                              hydrogen->value, hydrogen->source)
                                : "hydrogen of no class");
}

/// Martensitic metal is tempered only once it has cooled: the hold comes after that advice.
Sentences after_welding(const BoreHeat& heat, UnitSystem units) {
    const auto& hold = heat.preheat.post_heat;
    const bool asked_for = hold && hold->is_approved;
    Sentences sentences;
    for (const Advice& advice : heat.preheat.advice)
        sentences.push_back({fmt::format("{}{} [{}]",
                                         asked_for && advice.kind == "post_heat"
                                             ? "The family's own rules, beside the approved procedure: "
                                             : "",
                                         advice.text, advice.source),
                             {},
                             Stands::item});
    if (!asked_for)
        return sentences;
    const bool cools_first = heat.structure == "martensitic";
    sentences.insert(cools_first ? sentences.end() : sentences.begin(),
                     {fmt::format("{} hold at {} for {}: {} [{}].",
                                  cools_first ? "Once it has cooled as said above," : "After the last ring",
                                  show_exact(hold->temperature.value, units), show(hold->time),
                                  hold->temperature.by, hold->temperature.source),
                      {"heat.post_heat_degC", "heat.post_heat_s"}});
    return sentences;
}

} // namespace

Sentences heat_sentences(const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    Sentences sentences;
    const auto add = [&](std::string text, bool has_figure = false, const char* figure = "") {
        sentences.push_back({std::move(text)});
        if (has_figure)
            sentences.back().figures = {figure};
    };
    const auto stop = [&](std::string text) { sentences.push_back({std::move(text), {}, Stands::stop}); };
    if (preheat.state == PreheatState::not_known)
        return {{fmt::format("Preheat: {}.", heat_limits(heat, units).text)}, {heat_inputs(heat, units)}};
    if (preheat.state == PreheatState::contradictory) {
        stop(preheat.closed
                 ? fmt::format("Contradictory: {}. No figure is given to act on; the methods are told below.",
                               who_settles(preheat))
                 : fmt::format("Stop: {}. No figure is given to act on before the author of the approved "
                               "procedure has confirmed it; the methods are told below.",
                               never_heated(heat, units).words));
        ranges::push_back(sentences, rivals(preheat, units));
        add(inputs_sentence(heat, units), heat.wall.has_value(), "heat.wall_mm");
        add(heat_inputs(heat, units), heat.bore.has_value(), "heat.heat_input_kj_mm.bore");
        return sentences;
    }
    add(minimum_sentence(preheat, units), preheat.asked == PreheatState::figure, "heat.preheat_min_degC");
    const bool told = preheat.asked != PreheatState::needed_without_figure;
    if (preheat.interpass_max && (told || preheat.interpass_max->source == "approved"))
        add(maximum_sentence(preheat, units), true, "heat.interpass_max_degC");
    if (preheat.later && told)
        add(later_sentence(*preheat.later, units));
    if (!preheat.welding_rules.empty() && !preheat.unlisted_rules)
        add(fmt::format("The job works by {}.", preheat.welding_rules));
    if (!preheat.lowered_by.empty() && preheat.approved.empty())
        add(fmt::format("What would lower the preheat: {}.",
                        listed(preheat.lowered_by, "; ", lowering_text)));
    ranges::push_back(sentences, rivals(preheat, units));
    add(inputs_sentence(heat, units), heat.wall.has_value(), "heat.wall_mm");
    add(measuring(heat, units));
    add(heat_inputs(heat, units), heat.bore.has_value(), "heat.heat_input_kj_mm.bore");
    if (heat.hardness)
        add(fmt::format("Hardness beside the weld about {:.0f} HV, by {:.0f} HV more or less, as information "
                        "[Yurioka1987].",
                        heat.hardness->vickers, hardness_spread_HV),
            true, "heat.hardness_HV");
    ranges::push_back(sentences, after_welding(heat, units));
    return sentences;
}

} // namespace ringfill
