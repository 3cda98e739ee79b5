#pragma once

#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What the section along a bore cannot show by itself, a sentence each: holes, grooves, faces, plates.
std::vector<std::string> side_notes(const WornBore& bore, const BorePlan& plan, UnitSystem units);

} // namespace ringfill
