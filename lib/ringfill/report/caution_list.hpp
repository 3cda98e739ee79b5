#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/style.hpp>

namespace ringfill {

/// The cautions of a plan as every view prints them: those that apply by the time of the work, then what the
/// job leaves open as one compact list to check.
/// @param with_sources the keys of their sources stand behind them.
std::string caution_list(const Plan& plan, const Style& style, bool with_sources = false);

/// What the job leaves open, a sentence for each of its fields: what to look for, and the field that says it.
std::vector<std::string> not_stated(const std::vector<Caution>& cautions);

/// A bore's or pack's name is cut to this many characters where it stands in a line.
inline constexpr std::size_t longest_name_shown = 22;

} // namespace ringfill
