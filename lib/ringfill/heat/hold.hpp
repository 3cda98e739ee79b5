#pragma once

#include <optional>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// The hold after the last ring that lets hydrogen out, or nothing where nothing asks for it: yield strength
/// over 460 MPa and a wall over 30 mm [EN 1011-2:2001 C.3; memory]; CE(IIW) of 0.50 % and more over 13 mm on
/// hardenable metal [practice]; plate that is only as hot as it bears. At 250 °C or the minimum, at most 50 K
/// under the tempering, quenched and wear plate at 200 °C or the minimum, never over the maximum, for 2 h or
/// 1 h for 25 mm of wall if that is more. Never on metal that has a rule of its own for what follows the last
/// ring, nor on iron, manganese, austenitic, nickel and copper metal. A filler of another kind spares none:
/// it is the base that hardens.
/// @param preheat with its minimum, its maximum and the values of the family.
std::optional<PostHeat> hydrogen_hold(const HeatCase& heat_case, const Preheat& preheat);

/// How fast it may cool after the last ring, where a rate is asked for: steel of more than 0.40 % C over 25
/// mm, 50 K/h to 100 °C; iron welded warm or hot, 40 K/h to 150 °C; 13 % Cr steel, 50 K/h to what it must
/// cool to [practice]. Everything else cools under a dry blanket out of the draught.
std::optional<CoolingRate> slow_cooling(const HeatCase& heat_case, const Preheat& preheat);

/// The heat treatment after welding that documents ask for over this wall; one that is not known counts as
/// over.
std::vector<HeatTreatment> heat_treatment_after(const HeatCase& heat_case);

/// How long a heat treatment holds this wall at its temperature.
Time treatment_hold(const HeatTreatment& treatment, double wall_mm);

/// What is told of holding and cooling, with the sentences of the rules above.
void advise_after_welding(Preheat& preheat, const HeatCase& heat_case);

} // namespace ringfill
