#pragma once

#include <ringfill/caution/work_facts.hpp>
#include <ringfill/plan/plan.hpp>
#include <ringfill/plan/uses.hpp>

namespace ringfill {

/// Gathers from job and plan what the cautions of the table are judged by.
WorkFacts work_facts_of(const Plan& plan, const Job& job, const Shop& shop,
                        const SettingsByProcedure& settings);

} // namespace ringfill
