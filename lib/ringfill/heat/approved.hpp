#pragma once

#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// Lets an approved procedure rule: what it gives takes the place of what was worked out, the methods stay
/// beside it; an interpass maximum that it leaves open follows from its minimum.
void let_approved_rule(Preheat& preheat, const HeatCase& what, const Approved& approved);

/// One kind of pass and the heat input it is laid with.
struct LaidHeat {
    std::string pass; ///< "bore", "face 1", "groove 2"
    EnergyPerLength heat_input;
};

/// A fault for each heat input as laid that lies outside the band of the approved procedure, naming both.
std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid);

} // namespace ringfill
