#pragma once

#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// Lets the minimum of an approved procedure rule, no lower than the chill-off temperature. The methods stay
/// beside it; that one of them asks for preheat is not forgotten.
void let_approved_minimum_rule(Preheat& preheat, const Approved& approved);

/// Lets its interpass maximum and its post-heat rule, once the family has had its say. What they take the
/// place of is kept where it is the more careful, see Overruled.
void let_approved_rest_rule(Preheat& preheat, const HeatCase& what, const Approved& approved);

/// One kind of pass and the heat input it is laid with.
struct LaidHeat {
    std::string pass; ///< "bore", "face 1", "groove 2"
    EnergyPerLength heat_input;
};

/// A fault for each heat input as laid that lies outside the band of the approved procedure, naming both.
std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid);

} // namespace ringfill
