#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The whole plan on pages to print, as one file that needs nothing else: hot-work notes, not a permit.
/// @param sources the bibliography of the shop's tables and families.
std::string sheet(const Job& job, const Plan& plan, const Bibliography& sources);

} // namespace ringfill
