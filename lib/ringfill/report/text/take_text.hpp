#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// An amount of a need's unit as people read it: "12.32 kg", "2.4 L" or gallons, a number of pieces.
std::string amount(double value, const Need& need, UnitSystem units);

/// What is melted in all: "4.31 kg of wire", "62 electrodes", or both.
std::string filler_of(const Plan& plan);

/// The packs to load: "1 × 15 kg spool + 2 × 5 kg spool".
std::string load(const Need& need);

/// The plan as a person reads it before driving: what to load first, then the bores, the reasons, cautions,
/// notes and assumed values. Under 80 columns, in the plan's units.
std::string take_text(const Plan& plan, const Style& style);

} // namespace ringfill
