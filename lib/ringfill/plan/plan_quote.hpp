#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Adds the quote to a plan whose day, fire watch and list of what to take stand. Without a currency there is
/// none, and a note says so. Noted: a currency that the table does not have, and what quote() notes.
void plan_quote(Plan& plan, const Job& job, const Shop& shop, std::vector<Fault>& faults);

} // namespace ringfill
