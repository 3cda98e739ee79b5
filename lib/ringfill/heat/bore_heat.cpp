#include <ringfill/heat/bore_heat.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/heat/arc_energy.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/spared_metal.hpp>

namespace ringfill {
namespace {

/// The process of a filler by its ISO 4063 number; a torch has none of an arc.
std::string_view process_of(const Filler& filler) {
    constexpr std::pair<std::string_view, std::string_view> numbers[] = {
        {"gas_metal_arc", "135"},     {"metal_cored_arc", "138"},  {"flux_cored_arc", "136"},
        {"self_shielded_arc", "114"}, {"manual_metal_arc", "111"}, {"gas_tungsten_arc", "141"}};
    for (const auto& [process, number] : numbers)
        if (process == filler.process)
            return number;
    return "";
}

void lay_heat(BoreHeat& heat, const HeatSettings& settings, const std::vector<FacePad>& faces,
              const std::vector<GrooveFill>& grooves) {
    if (!heat.current || !heat.voltage)
        return;
    const auto at = [&](Speed travel) {
        return heat_input(heat.thermal_efficiency, arc_energy(*heat.voltage, *heat.current, travel));
    };
    heat.bore = at(settings.bead.travel);
    heat.laid.push_back({"bore", *heat.bore});
    for (std::size_t i = 0; i < faces.size(); ++i) {
        heat.faces.push_back(at(faces[i].bead.travel));
        heat.laid.push_back({fmt::format("face {}", i + 1), heat.faces.back()});
    }
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        const bool filled = grooves[i].volume > Volume();
        heat.grooves.push_back(filled ? std::optional(at(grooves[i].travel)) : std::nullopt);
        if (filled)
            heat.laid.push_back({fmt::format("groove {}", i + 1), *heat.grooves.back()});
    }
    heat.lowest = std::min_element(heat.laid.begin(), heat.laid.end(), [](const auto& a, const auto& b) {
                      return a.heat_input < b.heat_input;
                  })->heat_input;
}

/// By what it is called or by what it holds [ASTM A128: 11 % Mn at least; memory].
bool is_manganese_steel(const Base& base) {
    constexpr double least_manganese_pct = 10;
    if (base.structure != "austenitic")
        return false;
    return base.group == "manganese_steel" || ranges::any_of(base.composition_min, [](const auto& one) {
               return one.first == "Mn" && one.second.value >= least_manganese_pct;
           });
}

bool cracks_iron(Temperature low, Temperature high) {
    return low <= iron_cracks_to && high >= iron_cracks_from;
}

/// What the rings are heated against.
HeatedAgainst rings_against(const BoreHeat& heat) {
    const Preheat& preheat = heat.preheat;
    const Temperature low = preheat.minimum->value;
    const Temperature high = std::max(low, preheat.interpass_max ? preheat.interpass_max->value : low);
    if (heat.manganese_steel && (low >= over_hand_warm || preheat.overruled.interpass_max))
        return HeatedAgainst::manganese_steel;
    if (heat.cold_iron && cracks_iron(low, high))
        return HeatedAgainst::cold_iron;
    if (heat.cools_in_the_open && preheat.overruled.preheat_most)
        return HeatedAgainst::softening;
    return HeatedAgainst::nothing;
}

HeatedAgainst hold_against(const BoreHeat& heat) {
    const auto& hold = heat.preheat.post_heat;
    if (!hold)
        return HeatedAgainst::nothing;
    if (heat.manganese_steel)
        return HeatedAgainst::manganese_steel;
    if (heat.cold_iron && cracks_iron(hold->temperature.value, hold->temperature.value))
        return HeatedAgainst::cold_iron;
    if (heat.cools_in_the_open && heat.preheat.overruled.hold_most)
        return HeatedAgainst::softening;
    return HeatedAgainst::nothing;
}

/// Laid with nickel: of the methods that apply its own asks for none.
bool is_cold_iron(const Base& base, const Preheat& preheat) {
    return base.structure == "cast_iron" && ranges::any_of(preheat.methods, [](const PreheatMethod& method) {
               return method.applies && method.asks == Asks::none;
           });
}

} // namespace

HeatedAgainst heated_against(const BoreHeat& heat) {
    if (heat.preheat.approved.empty() || !heat.preheat.minimum)
        return HeatedAgainst::nothing;
    const HeatedAgainst rings = rings_against(heat);
    return rings != HeatedAgainst::nothing ? rings : hold_against(heat);
}

bool is_heated_against_its_rules(const BoreHeat& heat) {
    return heated_against(heat) != HeatedAgainst::nothing;
}

bool rings_are_heated_against_its_rules(const BoreHeat& heat) {
    return !heat.preheat.approved.empty() && heat.preheat.minimum &&
           rings_against(heat) != HeatedAgainst::nothing;
}

BoreHeat bore_heat(const WornBore& bore, const HeatSettings& settings, const Site& site, const Family& family,
                   const Base& base, const Build& build, const std::vector<FacePad>& faces,
                   const std::vector<GrooveFill>& grooves) {
    BoreHeat heat;
    heat.thermal_efficiency = thermal_efficiency(process_of(*settings.filler)).value_or(0);
    heat.current = settings.current;
    heat.voltage = settings.procedure->voltage;
    lay_heat(heat, settings, faces, grooves);
    std::vector<Fault> faults = certificate_faults(bore, base);
    ranges::push_back(faults, band_faults(bore.name, *settings.procedure, heat.laid));
    refuse_if_any(Origin::job, faults);

    const HeatCase what =
        heat_case(bore, *settings.procedure, site, family, base, *settings.filler, build.wall, heat.lowest);
    heat.wall = what.wall;
    heat.wall_is_given = bore.heat_wall.has_value();
    heat.restraint = what.restraint;
    heat.hydrogen_ml_100g = what.hydrogen_ml_100g;
    heat.hydrogen_is_measured = what.hydrogen_is_measured;
    heat.structure = base.structure;
    heat.unknown_metal = what.is_unknown_metal();
    heat.doubt = what.doubt;
    heat.not_the_grade = what.not_the_grade;
    heat.stainless_on_steel = what.stainless_on_steel;
    heat.nickel_on_steel = what.nickel_on_steel;
    heat.foreign_on_steel = what.foreign_on_steel;
    heat.ferritic_filler = what.ferritic_filler;
    heat.manganese_steel = is_manganese_steel(base);
    heat.cools_in_the_open = cools_in_the_open(base);
    heat.dirty_steel = dirty_steel(bore, base);
    heat.preheat = preheat(what, settings.procedure->approved ? &*settings.procedure->approved : nullptr);
    heat.cold_iron = is_cold_iron(base, heat.preheat);
    if (heat.structure == "ferritic" && heat.preheat.minimum && heat.lowest && heat.wall)
        heat.cooling = cooling_time(*heat.lowest, heat.preheat.minimum->value, *heat.wall);
    return heat;
}

} // namespace ringfill
