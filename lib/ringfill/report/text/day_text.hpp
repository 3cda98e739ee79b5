#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// The work by the clock, day after day: what is done on which bore, what is waited for, the nights; the
/// welding of a bore is one line. Then what taking turns saves, the share of the arc, and the visit for the
/// crack test.
std::string day_text(const Plan& plan, const Style& style);

/// When each piece of a bore is preheated, welded, roughed and finished by the clock; empty without a day.
std::string bore_clock(const Plan& plan, const BorePlan& bore);

} // namespace ringfill
