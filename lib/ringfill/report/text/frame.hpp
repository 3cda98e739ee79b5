#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

// What stands around the matter of every view.

/// The title and the lines on heat.
std::string view_head(const Plan& plan, const Style& style);

/// "arm root, each of 2": the line over what is told of one bore.
std::string bore_heading(const BorePlan& bore, const Style& style);

/// The notes of a plan under their heading.
std::string note_list(const Plan& plan, const Style& style);

/// Cautions, notes and the last line.
std::string view_end(const Plan& plan, const Style& style);

} // namespace ringfill
