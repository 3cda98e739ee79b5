#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Every layer, face and groove of a plan as comma-separated values, one line each, in the sequence of the
/// work: grooves, bore, faces. Each figure is for one bore.
std::string passes_csv(const Plan& plan);

} // namespace ringfill
