#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// The cautions of a plan as every view prints them: those that apply by the time of the work, then what the
/// job leaves open as one compact list to check.
/// @param with_sources the keys of their sources stand behind them.
std::string caution_list(const Plan& plan, const Style& style, bool with_sources = false);

/// A bore's or pack's name is cut to this many characters where it stands in a line.
inline constexpr std::size_t longest_name_shown = 22;

} // namespace ringfill
