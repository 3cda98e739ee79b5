#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/caution/heat_rules.hpp>

namespace ringfill {
namespace {

/// What bounds the approved heat of steel that softens.
const AskedTemperature& softened_by(const Preheat& preheat) {
    return preheat.overruled.hold_most ? *preheat.overruled.hold_most : *preheat.overruled.preheat_most;
}

/// What the approved procedure asks for that goes against the metal, in a list.
std::string asked_against(const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    const bool softens = heated_against(heat) == HeatedAgainst::softening;
    std::vector<std::string> parts;
    if (softens ? preheat.overruled.preheat_most.has_value() : *preheat.least() >= over_hand_warm)
        parts.push_back(fmt::format("a preheat of {}", show_exact(*preheat.least(), units)));
    if (preheat.overruled.interpass_max)
        parts.push_back(
            fmt::format("rings that begin at up to {}", show_exact(preheat.interpass_max->value, units)));
    if (softens ? preheat.overruled.hold_most.has_value() : preheat.post_heat.has_value())
        parts.push_back(fmt::format("a hold at {} after welding",
                                    show_exact(preheat.post_heat->temperature.value, units)));
    return fmt::format("{}", fmt::join(parts, ", "));
}

/// Why not, and the source of it.
std::pair<std::string, std::string> why_not(const BoreHeat& heat) {
    switch (heated_against(heat)) {
    case HeatedAgainst::cold_iron:
        return {"it is kept cold or heated whole, never between, and nickel is laid on it cold",
                "cast-iron-practice"};
    case HeatedAgainst::softening:
        return {fmt::format("{}; hardness that is lost does not come back", softened_by(heat.preheat).by),
                softened_by(heat.preheat).source};
    default:
        return {"hot for long it turns brittle, and no later heat mends that", "A128-practice"};
    }
}

void stop_heat(CautionList& stops, const BoreHeat& heat, UnitSystem units) {
    auto [because, source] = why_not(heat);
    stops.before(
        fmt::format("Stop: {}, yet the approved procedure {} asks for {}. Ask its author before any flame "
                    "and any arc; nothing to heat it with is counted.",
                    never_heated_words(heat, units), heat.preheat.approved, asked_against(heat, units)),
        std::move(because), std::move(source));
}

/// Where the limits of the standard count, what the metal really holds may ask for less.
std::string certificate_helps(const WornBore& bore, const BoreHeat& heat) {
    if (!bore.composition.empty() || heat.structure != "ferritic" || heat.unknown_metal ||
        heat.preheat.filler_range)
        return {};
    for (const PreheatMethod& method : heat.preheat.methods)
        if (method.rules && !method.formula.empty())
            return fmt::format(" Write the mill certificate of the part into bores[].composition: without it "
                               "the limits of {} count, and what it really holds may ask for less.",
                               bore.base);
    return {};
}

void stop_contradiction(CautionList& stops, const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    stops.before(
        preheat.approved.empty()
            ? fmt::format("Contradictory: needs an approved procedure. Neither figure is changed.{}{}",
                          certificate_helps(bore, heat), layer_by_layer(heat))
            : fmt::format("Contradictory: ask the author of the approved procedure {} before the first arc. "
                          "Neither figure is changed.",
                          preheat.approved),
        fmt::format("at least {} by {} [{}], at most {} by {} [{}]",
                    show_minimum(preheat.minimum->value, units), preheat.minimum->by, preheat.minimum->source,
                    show_maximum(preheat.interpass_max->value, units), preheat.interpass_max->by,
                    preheat.interpass_max->source));
}

} // namespace

std::string layer_by_layer(const BoreHeat& heat) {
    if (heat.foreign_on_steel)
        return " A layer of such a filler is as a rule qualified over a buffer layer that takes the preheat "
               "of the metal under it, and with its own interpass maximum from the next layer on.";
    if (heat.stainless_on_steel || heat.nickel_on_steel)
        return " A layer of such a filler is as a rule qualified with the preheat of the metal under it for "
               "the first layer, by some 50 K less at most and never without, and with the interpass maximum "
               "from the second layer on.";
    return {};
}

std::string never_heated_words(const BoreHeat& heat, UnitSystem units) {
    switch (heated_against(heat)) {
    case HeatedAgainst::manganese_steel:
        return "manganese steel is not heated";
    case HeatedAgainst::cold_iron:
        return fmt::format("cast iron that is laid cold cracks between {} and {}",
                           show_exact(iron_cracks_from, units), show_exact(iron_cracks_to, units));
    case HeatedAgainst::softening:
        return fmt::format("this steel softens over {}", show_exact(softened_by(heat.preheat).value, units));
    case HeatedAgainst::nothing:
        break;
    }
    return {};
}

std::vector<Caution> heat_stops(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    CautionList stops(bore, Matter::cracking);
    if (heat.preheat.doubt)
        stops.before("Stop and identify the metal before any heat. Austenitic manganese steel is ruined by "
                     "preheat, cast iron cracks without its own care. No preheat figure is given.",
                     fmt::format("the job calls it {}, yet {}", bore.base, *heat.preheat.doubt));
    else if (heat.preheat.state == PreheatState::not_known)
        stops.before("Take preheat from an approved procedure: no figure can be given here.",
                     fmt::format("no table and no rule of its family covers {}", bore.base));
    else if (is_heated_against_its_rules(heat))
        stop_heat(stops, heat, units);
    if (heat.preheat.state == PreheatState::contradictory)
        stop_contradiction(stops, bore, heat, units);
    return stops.all();
}

} // namespace ringfill
