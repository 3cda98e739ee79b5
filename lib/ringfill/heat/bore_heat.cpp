#include <ringfill/heat/bore_heat.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/units/metric.hpp>

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

void keep_lower(std::optional<EnergyPerLength>& lowest, EnergyPerLength next) {
    lowest = lowest ? std::min(*lowest, next) : next;
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
        keep_lower(heat.lowest_of_faces, heat.faces.back());
    }
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        const bool filled = grooves[i].is_filled();
        heat.grooves.push_back(filled ? std::optional(at(grooves[i].travel)) : std::nullopt);
        if (!filled)
            continue;
        heat.laid.push_back({fmt::format("groove {}", i + 1), *heat.grooves.back()});
        keep_lower(heat.lowest_of_grooves, *heat.grooves.back());
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
    const Temperature low = *preheat.least();
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

/// A band of 0.90 kJ/mm includes 0.90 as laid, whose last digit may differ.
constexpr double rounding = 1e-9;

} // namespace

Length measuring_distance(Length wall) {
    return wall > millimetres(50) ? thick_wall_distance : std::min(4.0 * wall, millimetres(50));
}

Length heated_zone(Length wall) {
    return std::max(wall, millimetres(76.2));
}

Time equalising_time(Length wall) {
    return in_si<Time>(120) * (wall / millimetres(25)).value();
}

HeatedAgainst heated_against(const BoreHeat& heat) {
    if (heat.preheat.approved.empty() || !heat.preheat.least())
        return HeatedAgainst::nothing;
    const HeatedAgainst rings = rings_against(heat);
    return rings != HeatedAgainst::nothing ? rings : hold_against(heat);
}

bool is_heated_against_its_rules(const BoreHeat& heat) {
    return heated_against(heat) != HeatedAgainst::nothing;
}

bool rings_are_heated_against_its_rules(const BoreHeat& heat) {
    return !heat.preheat.approved.empty() && heat.preheat.least() &&
           rings_against(heat) != HeatedAgainst::nothing;
}

std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid) {
    std::vector<Fault> faults;
    if (!procedure.approved || !procedure.approved->heat_input)
        return faults;
    const auto& [lowest, highest] = *procedure.approved->heat_input;
    for (const LaidHeat& one : laid)
        if (one.heat_input < lowest * (1 - rounding) || one.heat_input > highest * (1 + rounding))
            faults.push_back(fault_at_path(
                procedure.path + ".approved.heat_input",
                fmt::format("{:.3g} to {:.3g} kJ/mm", kj_mm(lowest), kj_mm(highest)),
                fmt::format("does not hold the {:.3g} kJ/mm that the {} of {} is laid with",
                            kj_mm(one.heat_input), one.pass, printable(bore, 60)),
                "change wire feed, current, voltage or travel, or take the procedure that fits"));
    return faults;
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
    static_cast<HeatFacts&>(heat) = what;
    heat.wall_is_given = bore.heat_wall.has_value();
    heat.structure = base.structure;
    heat.unknown_metal = what.is_unknown_metal();
    heat.manganese_steel = is_manganese_steel(base);
    heat.cools_in_the_open = cools_in_the_open(base);
    heat.dirty_steel = dirty_steel(bore, base);
    heat.preheat = preheat(what, settings.procedure->approved ? &*settings.procedure->approved : nullptr);
    heat.cold_iron = is_cold_iron(base, heat.preheat);
    if (const auto least = heat.preheat.least();
        heat.structure == "ferritic" && least && heat.lowest && heat.wall)
        heat.cooling = cooling_time(*heat.lowest, *least, *heat.wall);
    return heat;
}

} // namespace ringfill
