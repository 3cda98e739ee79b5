#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/take/need.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Share of what a welding set draws that reaches the arc [common practice, no source].
inline constexpr double set_efficiency = 0.8;
/// The period in which the duty of a welding set is told, s [EN IEC 60974-1, from memory].
inline constexpr double duty_period = 600;
/// What a generator gives for a litre of its fuel, J/L: 3.0 kWh [common practice, no source].
inline constexpr double generator_J_L = 3.0 * 3.6e6;

/// How one procedure loads the welding set.
struct PowerUse {
    std::string procedure;
    Current current;
    Voltage voltage;
    Time busiest_arc; ///< the most arc in any 10 min
};

/// What the whole job draws, all bores, counts applied.
struct MainsUse {
    std::optional<Power> electric_heater; ///< what it draws; nothing: none, or a flame
    Energy arc;                           ///< in the arc, U I t
    Energy heating;                       ///< drawn by the electric heater
    Power bar_drive;                      ///< of the boring bar
    Energy boring;                        ///< drawn by it
};

/// Duty that a welding set must bear: the most arc in any 10 min over 10 min, rounded up to 5 %, at least 5
/// and at most 100 [%]. [EN IEC 60974-1, from memory]
double duty_pct(Time busiest_arc);

/// What is drawn from the mains for it, J: the arc through the set, the rest as it is.
Energy drawn(const MainsUse& mains);

/// One welding set with its rating, the power that must be there at once [kW], and the fuel of a generator
/// where there are no mains [L] with its reserve. Peak = highest U I / set efficiency + electric heater, as
/// if they ran together, or the drive of the boring bar, which does not, if that is more. Without a procedure
/// nothing is taken.
/// @param reserve the share of generator fuel taken on top.
/// @param units of what is poured: cans of whole litres or US gallons.
std::vector<Need> take_power(const std::vector<PowerUse>& uses, const MainsUse& mains, double reserve,
                             UnitSystem units = UnitSystem::metric);

} // namespace ringfill
