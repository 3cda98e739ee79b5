#include <ringfill/say/heat_sentences.hpp>

#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/caution/rules.hpp>
#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::string noted(const PreheatMethod& method) {
    return method.note.empty() ? std::string() : fmt::format(" ({})", method.note);
}

/// @param waits nothing of it is done before the author of the approved procedure has confirmed it.
std::string minimum_sentence(const Preheat& preheat, bool waits, UnitSystem units) {
    if (preheat.asked == PreheatState::needed_without_figure)
        return "Preheat: needed, and no method here says how much. It is never left out: take the figure "
               "from "
               "an approved procedure.";
    const AskedTemperature& asked = *preheat.minimum;
    if (preheat.asked == PreheatState::none)
        return fmt::format("Preheat: none, dry and hand-warm; no method here asks for more than {} [{}].",
                           show_minimum(chill_off, units), asked.source);
    if (waits)
        return fmt::format("Asked by {} [{}], and not done before that: preheat to at least {}.", asked.by,
                           asked.source, shown_limits(preheat, units).minimum);
    std::string why;
    for (const PreheatMethod& method : preheat.methods)
        if (method.rules)
            why = noted(method);
    return fmt::format("Preheat to at least {} before the first ring and hold it: asked by {} [{}]{}.",
                       shown_limits(preheat, units).minimum, asked.by, asked.source, why);
}

std::string maximum_sentence(const Preheat& preheat, UnitSystem units) {
    const ShownLimits shown = shown_limits(preheat, units);
    return fmt::format("No ring begins over {}: {} [{}].{}", shown.maximum, preheat.interpass_max->by,
                       preheat.interpass_max->source,
                       shown.exact ? " The two limits are so close that they are not rounded: read them with "
                                     "a contact thermometer."
                                   : "");
}

bool goes_over(const PreheatMethod& method, const Preheat& preheat) {
    const auto least = preheat.least();
    return method.minimum && least && *method.minimum > *least;
}

/// "Lower: …", "Ask for none: …" and so on: the methods beside the one that rules, one sentence a kind.
Sentences rivals(const Preheat& preheat, UnitSystem units) {
    std::string higher, lower, none, unnamed, beside, unusable;
    const auto add = [](std::string& list, const std::string& item) {
        list += (list.empty() ? "" : "; ") + item;
    };
    for (const PreheatMethod& method : preheat.methods) {
        if (method.rules)
            continue;
        std::string figure = method.name;
        if (method.range_from && !method.applies) // of a range that does not count
            figure += fmt::format(" {} to", show_exact(*method.range_from, units));
        if (method.minimum)
            figure += " " + show_minimum(*method.minimum, units);
        const std::string item = fmt::format("{}{} [{}]", figure, noted(method), method.source);
        if (method.asks == Asks::unknown)
            add(unusable, item);
        else if (method.asks == Asks::none)
            add(none, item);
        else if (method.asks == Asks::unnamed)
            add(unnamed, item);
        else if (!method.applies)
            add(beside, item);
        else
            add(goes_over(method, preheat) ? higher : lower, item);
    }
    Sentences sentences;
    const auto tell = [&](const std::string& begin, const std::string& list) {
        if (!list.empty())
            sentences.push_back({fmt::format("{}: {}.", begin, list)});
    };
    tell("Higher than what rules", higher);
    tell("Lower or equal", lower);
    tell("Asks for preheat without a figure", unnamed);
    tell("Asks for none", none);
    tell("Beside these, without a say", beside);
    tell("Not usable here", unusable);
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
            "Measure {} or more from the edge of the weld, where no flame plays: the wall is not "
            "known, so take the flame away and wait for the heat to even out, 2 min for every "
            "{} of it [ISO13916].",
            about(thick_wall_distance, units), units == UnitSystem::metric ? "25 mm" : "inch");
    return fmt::format(
        "Measure {} from the edge of the weld, on the side away from the flame. Where only the heated side "
        "can be reached, take the flame away, wait {}, then read [ISO13916].{}",
        about(measuring_distance(*heat.wall), units),
        show(in_si<Time>(factor::minute * std::ceil(equalising_time(*heat.wall).value() / factor::minute))),
        heat.preheat.asked == PreheatState::none
            ? std::string()
            : fmt::format(" Heat {} or more each way from the weld [D1.1-zone].",
                          about(heated_zone(*heat.wall), units)));
}

std::string heat_inputs(const BoreHeat& heat, UnitSystem units) {
    if (heat.laid.empty())
        return "Heat input: not known without current and voltage.";
    std::string text = "Heat input as laid:";
    for (const LaidHeat& one : heat.laid)
        text += fmt::format("{} {} {}", &one == &heat.laid.front() ? "" : ",", one.pass,
                            heat_input_text(one.heat_input, units));
    text += fmt::format(" (thermal efficiency {:.1f}).", heat.thermal_efficiency);
    if (heat.cooling)
        text += fmt::format(" From 800 to 500 °C in about {:.1f} s at the preheat, as information; the wall "
                            "counts as {}, over {} it is thick [EN1011-2-D].",
                            heat.cooling->t85().value(), heat.cooling->is_thick ? "thick" : "thin",
                            show(heat.cooling->transition, units));
    return text;
}

std::string inputs_sentence(const BoreHeat& heat, UnitSystem units) {
    return fmt::format("Reckoned with {}, {} restraint, {}.",
                       heat.wall ? fmt::format("a wall of {}{}", show(*heat.wall, units),
                                               heat.wall_is_given ? " as the job says" : "")
                                 : std::string("the thickest wall"),
                       heat.restraint == Restraint::high ? "high" : "medium",
                       heat.hydrogen_ml_100g
                           ? fmt::format("hydrogen {} {:.3g} ml/100 g [{}]",
                                         heat.hydrogen_is_measured ? "measured at" : "up to",
                                         heat.hydrogen_ml_100g->value, heat.hydrogen_ml_100g->source)
                           : std::string("hydrogen of no class"));
}

/// Martensitic metal is tempered only once it has cooled: the hold comes after that advice.
Sentences after_welding(const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    const bool cools_first = heat.structure == "martensitic";
    Sentences sentences;
    const bool asked_for = preheat.post_heat && preheat.post_heat->is_approved;
    for (const Advice& advice : preheat.advice)
        sentences.push_back({fmt::format("{}{} [{}]",
                                         asked_for && advice.kind == "post_heat"
                                             ? "The family's own rules, beside the approved procedure: "
                                             : "",
                                         advice.text, advice.source),
                             Stands::item});
    if (asked_for)
        sentences.insert(
            cools_first ? sentences.end() : sentences.begin(),
            {fmt::format("{} hold at {} for {}: {} [{}].",
                         cools_first ? "Once it has cooled as said above," : "After the last ring",
                         show_exact(preheat.post_heat->temperature.value, units),
                         show(preheat.post_heat->time), preheat.post_heat->temperature.by,
                         preheat.post_heat->temperature.source),
             Stands::among,
             {"heat.post_heat_degC", "heat.post_heat_s"}});
    return sentences;
}

} // namespace

Sentences heat_sentences(const BoreHeat& heat, UnitSystem units) {
    Sentences sentences;
    if (heat.preheat.state == PreheatState::not_known)
        return {{fmt::format("Preheat: {}.", heat_limits(heat, units))}, {heat_inputs(heat, units)}};
    if (heat.preheat.state == PreheatState::contradictory)
        sentences.push_back(
            {fmt::format("Contradictory: {}. Both figures stand as they are.{}",
                         heat.preheat.approved.empty() ? "needs an approved procedure"
                                                       : "ask the author of the approved procedure",
                         heat.preheat.approved.empty() ? layer_by_layer(heat) : std::string()),
             Stands::stop});
    if (is_heated_against_its_rules(heat))
        sentences.push_back(
            {fmt::format("Stop: {}. What the approved procedure asks for below waits until its author has "
                         "confirmed it.",
                         never_heated_words(heat, units)),
             Stands::stop});
    sentences.push_back({minimum_sentence(heat.preheat, rings_are_heated_against_its_rules(heat), units)});
    if (tells_minimum(heat.preheat))
        sentences.back().figures = {"heat.preheat_min_degC"};
    if (heat.preheat.interpass_max)
        sentences.push_back(
            {maximum_sentence(heat.preheat, units), Stands::among, {"heat.interpass_max_degC"}});
    ranges::push_back(sentences, rivals(heat.preheat, units));
    sentences.push_back({inputs_sentence(heat, units)});
    if (heat.wall)
        sentences.back().figures = {"heat.wall_mm"};
    sentences.push_back({measuring(heat, units)});
    sentences.push_back({heat_inputs(heat, units)});
    if (heat.bore)
        sentences.back().figures = {"heat.heat_input_kj_mm.bore"};
    ranges::push_back(sentences, after_welding(heat, units));
    return sentences;
}

} // namespace ringfill
