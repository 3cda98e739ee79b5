#pragma once

#include <vector>

#include <ringfill/plan/uses.hpp>

namespace ringfill {

/// Puts together how every figure of a plan was reached: bore by bore, then the totals and what to take.
/// What boring and the lines to take had of it is moved there.
void gather_working(Plan& plan, const Job& job, const SettingsByProcedure& settings);

} // namespace ringfill
