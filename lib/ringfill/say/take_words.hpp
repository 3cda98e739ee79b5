#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// An amount of a need's unit as people read it: "12.32 kg", "2.4 L" or gallons, a number of pieces; "not
/// known".
std::string amount(double value, const Need& need, UnitSystem units);

/// "2 bores"
std::string bores_in_all(const Plan& plan);

/// The packs to load: "1 × 15 kg spool + 2 × 5 kg spool".
std::string load(const Need& need);

} // namespace ringfill
