#include <ringfill/heat/bore_heat.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

void keep_lower(std::optional<EnergyPerLength>& lowest, EnergyPerLength next) {
    lowest = std::min(lowest.value_or(next), next);
}

void lay_heat(BoreHeat& heat, const BoreWeld& weld) {
    if (!heat.current || !heat.voltage)
        return;
    const auto add = [&](std::string pass, std::string figure, Speed travel) {
        const EnergyPerLength input =
            heat_input(heat.thermal_efficiency, *heat.voltage, *heat.current, travel);
        heat.laid.push_back({std::move(pass), input, travel, std::move(figure)});
        keep_lower(heat.lowest, input);
        return input;
    };
    heat.bore = add("bore", "heat.heat_input_kj_mm.bore", weld.bead.travel);
    for (std::size_t i = 0; i < weld.faces.size(); ++i) {
        heat.faces.push_back(add(fmt::format("face {}", i + 1), fmt::format("faces[{}].heat_input_kj_mm", i),
                                 weld.faces[i].bead.travel));
        keep_lower(heat.lowest_of_faces, heat.faces.back());
    }
    for (std::size_t i = 0; i < weld.grooves.size(); ++i) {
        heat.grooves.emplace_back();
        if (!weld.grooves[i].is_filled())
            continue;
        heat.grooves.back() = add(fmt::format("groove {}", i + 1),
                                  fmt::format("grooves[{}].heat_input_kj_mm", i), weld.grooves[i].travel);
        keep_lower(heat.lowest_of_grooves, *heat.grooves.back());
    }
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

/// What metal held between two temperatures is heated against.
/// @param is_hot hotter than manganese steel bears. @param softens over what softens it.
HeatedAgainst held_against(const BoreHeat& heat, bool is_hot, Temperature low, Temperature high,
                           bool softens) {
    if (heat.manganese_steel && is_hot)
        return HeatedAgainst::manganese_steel;
    if (heat.cold_iron && low <= iron_cracks_to && high >= iron_cracks_from)
        return HeatedAgainst::cold_iron;
    return softens ? HeatedAgainst::softening : HeatedAgainst::nothing;
}

HeatedAgainst rings_against(const BoreHeat& heat) {
    const Preheat& preheat = heat.preheat;
    if (preheat.approved.empty() || preheat.approved_confirmed || !preheat.minimum)
        return HeatedAgainst::nothing;
    const Temperature low = preheat.minimum->value;
    const Temperature high = preheat.interpass_max ? std::max(low, preheat.interpass_max->value) : low;
    return held_against(heat, low >= over_hand_warm || preheat.overruled.interpass_max, low, high,
                        preheat.overruled.preheat_most || preheat.overruled.rings_most);
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
    const auto& hold = heat.preheat.post_heat;
    const HeatedAgainst rings = rings_against(heat);
    if (rings != HeatedAgainst::nothing || heat.preheat.approved.empty() || heat.preheat.approved_confirmed ||
        !heat.preheat.least() || !hold)
        return rings;
    return held_against(heat, true, hold->temperature.value, hold->temperature.value,
                        heat.preheat.overruled.hold_most.has_value());
}

bool is_heated_against_its_rules(const BoreHeat& heat) {
    return heated_against(heat) != HeatedAgainst::nothing;
}

std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid) {
    std::vector<Fault> faults;
    if (!procedure.approved || !procedure.approved->heat_input)
        return faults;
    const auto& [lowest, highest] = *procedure.approved->heat_input;
    for (const LaidHeat& laid_heat : laid)
        if (laid_heat.heat_input < lowest * (1 - rounding) || laid_heat.heat_input > highest * (1 + rounding))
            faults.push_back(fault_at_path(
                procedure.path + ".approved.heat_input",
                fmt::format("{:.3g} to {:.3g} kJ/mm", kj_mm(lowest), kj_mm(highest)),
                fmt::format("does not hold the {:.3g} kJ/mm that the {} of {} is laid with",
                            kj_mm(laid_heat.heat_input), laid_heat.pass, printable(bore, 60)),
                "change wire feed, current, voltage or travel, or take the procedure that fits"));
    return faults;
}

BoreHeat bore_heat(const GivenBore& given, const BoreWeld& weld, const Site& site, const Family& family,
                   const HeatRules& rules) {
    const auto& [bore, settings, base] = given;
    const Procedure& procedure = *settings.procedure;
    BoreHeat heat;
    heat.thermal_efficiency = thermal_efficiency(settings.filler->process);
    heat.current = settings.deposition.current;
    heat.voltage = procedure.voltage;
    lay_heat(heat, weld);
    std::vector<Fault> faults = certificate_faults(bore, base);
    ranges::push_back(faults, band_faults(bore.name, procedure, heat.laid));
    refuse_if_any(Origin::job, faults);

    const HeatCase what =
        heat_case(bore, procedure, site, family, base, *settings.filler, weld.build.wall, heat.lowest, rules);
    static_cast<HeatFacts&>(heat) = what;
    heat.wall_is_given = bore.heat_wall.has_value();
    heat.structure = base.structure;
    heat.unknown_metal = what.is_unknown_metal();
    heat.manganese_steel = is_manganese_steel(base);
    heat.cools_in_the_open = cools_in_the_open(base);
    heat.dirty_steel = dirty_steel(bore, base);
    heat.preheat = preheat(what, procedure.approved ? &*procedure.approved : nullptr);
    heat.cold_iron = is_cold_iron(base, heat.preheat);
    if (is_heated_against_its_rules(heat))
        heat.preheat.state = PreheatState::contradictory;
    if (const auto least = heat.preheat.least();
        heat.structure == "ferritic" && least && heat.lowest && heat.wall &&
        (heat.preheat.state == PreheatState::figure || heat.preheat.state == PreheatState::none))
        heat.cooling = cooling_time(*heat.lowest, *least, *heat.wall);
    heat.quenched = what.is_quenched();
    heat.t85_window_s = base.t85_s;
    if (heat.cooling)
        heat.hardness = hardness_beside_weld(what, heat.cooling->t85());
    return heat;
}

EnergyPerLength heat_input_for(const BoreHeat& heat, double t85_s) {
    double low = 1e3;
    double high = 1e8;
    for (int i = 0; i < 100; ++i) {
        const double middle = std::sqrt(low * high);
        const auto cooling = cooling_time(in_si<EnergyPerLength>(middle), *heat.preheat.least(), *heat.wall);
        (cooling && cooling->t85().value() < t85_s ? low : high) = middle;
    }
    return in_si<EnergyPerLength>(high);
}

} // namespace ringfill
