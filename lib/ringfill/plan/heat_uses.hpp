#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/take/take_power.hpp>

namespace ringfill {

/// What the heat of all bores takes, counts applied: fuel and oxygen, blankets, and the power of welding set
/// and heater.
std::vector<Need> heat_needs(const Job& job, const std::vector<BorePlan>& bores, const Shop& shop);

/// What arc, electric heater and boring bar of all bores draw, counts applied.
MainsUse mains_use(const std::vector<BorePlan>& bores, Power bar_drive);

/// What the heat balances of the bores take for granted: heater, air, and what carries heat off. Empty when
/// no bore has one.
std::vector<Assumed> heat_assumed(const Job& job, const std::vector<BorePlan>& bores);

} // namespace ringfill
