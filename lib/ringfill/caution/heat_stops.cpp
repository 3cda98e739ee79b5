
#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

/// What bounds the approved heat of steel that softens.
const AskedTemperature& softened_by(const Preheat& preheat) {
    const Overruled& overruled = preheat.overruled;
    return overruled.rings_most     ? *overruled.rings_most
           : overruled.preheat_most ? *overruled.preheat_most
                                    : *overruled.hold_most;
}

/// What the approved procedure asks for that goes against the metal, in a list.
std::string asked_against(const BoreHeat& heat, UnitSystem units) {
    const auto& [interpass_max, rings_most, preheat_most, hold_most, post_heat] = heat.preheat.overruled;
    const bool softens = heated_against(heat) == HeatedAgainst::softening;
    std::vector<std::string> parts;
    if (softens ? preheat_most.has_value() : *heat.preheat.least() >= over_hand_warm)
        parts.push_back("a preheat of " + show_exact(*heat.preheat.least(), units));
    if (softens ? rings_most.has_value() : interpass_max.has_value())
        parts.push_back("rings that begin at up to " + show_exact(heat.preheat.interpass_max->value, units));
    if (const auto& hold = heat.preheat.post_heat; softens ? hold_most.has_value() : hold.has_value())
        parts.push_back(
            fmt::format("a hold at {} after welding", show_exact(hold->temperature.value, units)));
    return listed(parts, ", ");
}

/// Whether the limits of the standard count, so that what the metal really holds may ask for less.
bool certificate_helps(const BoreHeat& heat) {
    return !heat.certified && heat.structure == "ferritic" && !heat.unknown_metal &&
           !heat.preheat.filler_range &&
           ranges::any_of(heat.preheat.methods, [](const PreheatMethod& method) {
               return method.rules && !method.formula.empty();
           });
}

void stop_contradiction(CautionList& stops, const WornBore& bore, const BoreHeat& heat) {
    const auto& minimum = heat.preheat.minimum;
    const auto& maximum = heat.preheat.interpass_max;
    std::string author = "needs an approved procedure";
    std::string help;
    if (!heat.preheat.approved.empty())
        author = fmt::format("ask the author of the approved procedure {} before the first arc",
                             heat.preheat.approved);
    else if (certificate_helps(heat))
        help = fmt::format(" Write the mill certificate of the part into bores[].composition: without it the "
                           "limits of {} count, and what it really holds may ask for less.",
                           bore.base);
    const auto told = [&](const AskedTemperature& asked) {
        return asked.source == "approved"
                   ? fmt::format("{} by {}", show_exact(asked.value, stops.units), asked.by)
                   : fmt::format("what {} asks", asked.by);
    };
    stops.before("Contradictory: {}. Neither limit is changed, and no figure is given to act on.{}",
                 "between {2} [{3}] at least and {4} [{5}] at most no ring could begin", author, help,
                 told(*minimum), minimum->source, told(*maximum), maximum->source);
}

} // namespace

NeverHeated never_heated(const BoreHeat& heat, UnitSystem units) {
    switch (heated_against(heat)) {
    case HeatedAgainst::manganese_steel:
        return {"manganese steel is not heated",
                "hot for long it turns brittle, and no later heat mends that", "A128-practice"};
    case HeatedAgainst::cold_iron:
        return {fmt::format("cast iron that is laid cold cracks between {} and {}",
                            show_exact(iron_cracks_from, units), show_exact(iron_cracks_to, units)),
                "it is kept cold or heated whole, never between, and nickel is laid on it cold",
                "cast-iron-practice"};
    case HeatedAgainst::softening: {
        const AskedTemperature& most = softened_by(heat.preheat);
        return {"this steel softens over " + show_exact(most.value, units),
                most.by + "; hardness that is lost does not come back", most.source};
    }
    case HeatedAgainst::nothing:
        break;
    }
    return {};
}

void heat_stops(CautionList& stops, const RuledBore& on) {
    const BoreHeat& heat = on.plan.heat;
    const NeverHeated why = never_heated(heat, on.units);
    if (heat.preheat.doubt)
        stops.before("Stop and identify the metal before any heat. Austenitic manganese steel is ruined by "
                     "preheat, cast iron cracks without its own care. No preheat figure is given.",
                     "the job calls it {}, yet {}", on.bore.base, *heat.preheat.doubt);
    else if (heat.preheat.state == PreheatState::not_known)
        stops.before("Take preheat from an approved procedure: no figure can be given here.",
                     "no table and no rule of its family covers {}", on.bore.base);
    else if (is_heated_against_its_rules(heat))
        stops.before_by(why.source,
                        "Stop: {}, yet the approved procedure {} asks for {}. Ask its author before any "
                        "flame and any arc; nothing to heat it with is counted.",
                        "{3}", why.words, heat.preheat.approved, asked_against(heat, on.units), why.because);
    if (heat.preheat.closed)
        stop_contradiction(stops, on.bore, heat);
}

} // namespace ringfill
