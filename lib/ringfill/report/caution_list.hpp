#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/style.hpp>

namespace ringfill {

/// The cautions of a plan under their heading, as every view prints them.
std::string caution_list(const Plan& plan, const Style& style);

/// A bore's or pack's name is cut to this many characters where it stands in a line.
inline constexpr std::size_t longest_name_shown = 22;

} // namespace ringfill
