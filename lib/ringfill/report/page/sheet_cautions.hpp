#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// The cautions about one bore, under a heading of the third rank: before, during and after the work. Empty
/// when there are none.
Markup bore_cautions(const Plan& plan, const std::string& name);

/// All others: about the job and its procedures. Then one list, for all of the job, of what may apply because
/// the job does not say.
Markup job_cautions(const Plan& plan);

} // namespace ringfill
