#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The quote of a plan whose day, fire watch and list of what to take stand. Without a currency there is
/// none. Noted: a currency that the table does not have, and what quote() notes.
/// @param no_day why there is no day.
std::optional<Quote> plan_quote(const Plan& plan, const std::string& no_day, const Job& job, const Shop& shop,
                                std::vector<Fault>& faults);

} // namespace ringfill
