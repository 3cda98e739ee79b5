#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The quote as comma-separated values: a line each, then the sums, what is put on top and the total. Amounts
/// have the decimals of the currency; a missing one is empty and said. Without a quote only the heading.
std::string quote_csv(const Plan& plan);

} // namespace ringfill
