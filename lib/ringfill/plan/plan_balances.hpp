#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// More rings than this in all bores together (each bore once) are not followed one by one, in no bore.
inline constexpr std::size_t most_rings_of_a_job = 100'000;

/// Follows the heat of every bore, which are planned otherwise and stand in the order of the job, and adds
/// the starts after their stops and reheats.
void plan_balances(std::vector<BorePlan>& bores, const Job& job, const Shop& shop, const Progress& progress);

} // namespace ringfill
