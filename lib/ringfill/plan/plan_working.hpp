#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// How every figure of a plan was reached: bore by bore, then the totals, the day, what to take and the
/// quote.
std::vector<Working> plan_working(const Plan& plan, const std::vector<GivenBore>& given,
                                  const Cutting& cutting);

} // namespace ringfill
