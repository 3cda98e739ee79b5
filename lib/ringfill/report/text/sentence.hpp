#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// Sentences as lines of plain text, each wrapped under its beginning.
std::string wrapped(const Sentences& sentences);

/// The lines on heat at the head of every view; what stops the work stands out.
std::string heat_head(const Plan& plan, const Style& style);

/// The last line of every print, after a blank one.
std::string closing_line();

} // namespace ringfill
