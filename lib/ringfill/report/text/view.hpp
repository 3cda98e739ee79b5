#pragma once

#include <functional>
#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

// What stands around the matter of every view.

/// The title, cut to so many characters.
std::string view_title(const Plan& plan, const Style& style, std::size_t longest = 200);

/// The lines on heat at the head of every view; what stops the work stands out.
std::string heat_head(const Plan& plan, const Style& style);

/// Of them, what looks mistyped and what tables of the user replace, for views that do not tell of heat.
std::string doubt_head(const Plan& plan, const Style& style);

/// The cautions of a plan: those that apply by the time of the work, then what the job leaves open as one
/// compact list to check.
/// @param with_sources the keys of their sources stand behind them.
std::string caution_list(const Plan& plan, const Style& style, bool with_sources = false);

/// The last line of every print, after a blank one.
std::string closing_line();

/// A whole view: title and heat, its matter, cautions, notes and the last line.
std::string whole_view(const Plan& plan, const Style& style, const std::string& matter);

/// A whole view of what is told of each bore, under a line such as "arm root, each of 2", and of what comes
/// after them.
std::string bore_by_bore(const Plan& plan, const Style& style,
                         const std::function<std::string(const BorePlan&)>& of_bore,
                         const std::string& after = {});

} // namespace ringfill
