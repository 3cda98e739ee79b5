#pragma once

#include <vector>

#include <ringfill/plan/uses.hpp>

namespace ringfill {

/// How every figure of a plan was reached, bore by bore, then the totals and what to take.
std::vector<Working> plan_working(const Job& job, const Plan& plan, const SettingsByProcedure& settings);

} // namespace ringfill
