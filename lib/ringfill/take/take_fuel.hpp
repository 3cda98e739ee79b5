#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/fuels.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What one bore of the job takes in heat from a heater.
struct FuelUse {
    std::string bore;
    int count = 1;          ///< of this bore
    Energy heat;            ///< into the metal, for one: warm-up, reheats, post-heat
    double efficiency = 0;  ///< share of the source's heat that reaches the metal, over 0 to 1
    Power source;           ///< given off by the source
    std::string fuel;       ///< empty: electric, which take_power counts
    std::string parts = {}; ///< what the heat of one is for, in words
};

/// The fuel to take, a line a fuel [kg], in the order of the bores: mass = Σ count·heat/(efficiency·net
/// heating value). The cylinders hold it by what can be drawn from them, and stand ready together in such
/// number that their steady draw gives source/net heating value, unless all of it, reserve included, is under
/// 0.2 kg, which a hand torch burns. Behind a fuel that takes it, the oxygen
/// [L at 15 degC and 1 atm]. Uses without heat or fuel give nothing. Formula: energy balance; draw: common
/// practice. Throws std::logic_error for a fuel that the table does not hold and an efficiency not over 0.
/// @param reserve the share taken on top. @param ambient of the site; below freezing a cylinder gives half
/// its usual draw, frosted over [common practice, no source].
std::vector<Need> take_fuel(const std::vector<FuelUse>& uses, const Fuels& fuels, double reserve,
                            const Packs& packs, UnitSystem units, std::optional<Temperature> ambient = {});

} // namespace ringfill
