#pragma once

#include <ringfill/take/needs.hpp>
#include <ringfill/units/factor.hpp>

#include "take/sample.hpp"

namespace ringfill::testing {

inline constexpr auto metric = UnitSystem::metric;
inline constexpr double exact = 1e-9; // the rounding of a double

inline FuelPack fuel_cylinder(const std::string& name, UnitSystem units, const std::string& holds,
                              double content_kg, double draw_kg_h) {
    FuelPack pack;
    pack.name = name;
    pack.units = units;
    pack.holds = holds;
    pack.content = {kg(content_kg), "a"};
    pack.usable_share = {0.8, "a"};
    pack.draw = {in_si<MassFlow>(draw_kg_h / factor::hour), "a"};
    return pack;
}

/// Cylinders of 8 and 32 kg that can be drawn, at 1 and 3 kg/h.
inline Packs fuel_packs() {
    Packs packs = round_packs();
    packs.fuel = {fuel_cylinder("small", metric, "wood gas", 10, 1),
                  fuel_cylinder("large", metric, "wood gas", 40, 3),
                  fuel_cylinder("inch", UnitSystem::inch, "wood gas", 10, 1),
                  fuel_cylinder("other", metric, "town gas", 10, 1)};
    packs.gas.push_back(cylinder("oxygen bottle", metric, "oxygen", 5000, 0.9));
    return packs;
}

/// 50 MJ/kg; town gas with 2 m3 of oxygen to a kilogram.
inline Fuels round_fuels() {
    Fuels fuels;
    fuels.fuels.resize(2); // a list of them in braces trips g++ 12 over its own std::string
    fuels.fuels[0].name = "wood gas";
    fuels.fuels[0].net_J_kg = {50e6, "wood"};
    fuels.fuels[1].name = "town gas";
    fuels.fuels[1].net_J_kg = {50e6, "town"};
    fuels.fuels[1].oxygen_m3_kg = Sourced<double>{2, "flame"};
    return fuels;
}

inline FuelUse use_of(double heat_MJ, double source_kW, const std::string& fuel = "wood gas", int count = 1,
                      const std::string& bore = "arm root", double efficiency = 0.25) {
    return {bore, count, in_si<Energy>(heat_MJ * 1e6), efficiency, in_si<Power>(source_kW * 1e3), fuel};
}

inline std::vector<Need> lines_for(const std::vector<FuelUse>& uses, double reserve = 0.1,
                                   UnitSystem units = metric) {
    return fuel_needs(uses, round_fuels(), reserve, fuel_packs(), units);
}

} // namespace ringfill::testing
