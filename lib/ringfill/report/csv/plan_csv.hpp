#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

// The tables of a plan as comma-separated values, a heading and a line each.

/// What to take, a line a need, amounts in the line's own unit.
std::string take_csv(const Plan& plan);

/// Every layer, face and groove in the sequence of the work: grooves, bore, faces. Each figure is for one
/// bore.
std::string passes_csv(const Plan& plan);

/// Every cut, facing and standing time in the sequence of the work. Each figure is for one bore.
std::string boring_csv(const Plan& plan);

/// The quote: a line each, then the sums, what is put on top and the total. Amounts have the decimals of the
/// currency; a missing one is empty and said. Without a quote only the heading.
std::string quote_csv(const Plan& plan);

} // namespace ringfill
