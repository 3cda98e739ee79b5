#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// What to set and lay, bore by bore in the sequence of the work: grooves, layers, faces, with the torch
/// speed of each. Each figure is for one bore. Under 80 columns, in the plan's units.
std::string passes_text(const Plan& plan, const Style& style);

} // namespace ringfill
