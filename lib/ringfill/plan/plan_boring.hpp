#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/take/take_inserts.hpp>

namespace ringfill {

/// Plans the boring of a bore that is welded in the plan. Throws Faulty as bore_boring() does.
void plan_boring(BorePlan& plan, const WornBore& bore, const Job& job, const Shop& shop, const Base& base);

/// The cutting edges of all bores.
std::vector<InsertUse> insert_uses(const std::vector<BorePlan>& bores);

/// What the bar's cautions and notes say, and the values the job left out.
void judge_boring(Plan& plan, const Job& job, const Cutting& cutting);

} // namespace ringfill
