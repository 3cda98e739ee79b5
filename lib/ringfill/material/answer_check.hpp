#pragma once

#include <string>
#include <string_view>

#include <ringfill/material/abi.h>
#include <ringfill/material/answer.hpp>
#include <ringfill/material/breach.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

// Copies of what a plugin gives. Each throws Breach.

/// A text; `what` names it in the breach. A breach: null with a size, too long, not UTF-8 or not clean.
std::string checked_text(const rf_text& text, std::string_view what);

/// The same; an empty text is a breach too.
std::string checked_name(const rf_text& text, std::string_view what);

/// A value, by its name from the list in abi.h.
AnsweredFigure checked_value(const rf_figure* figure, const Bibliography& sources);

AnsweredMethod checked_method(const rf_figure* figure, const Bibliography& sources);

Advice checked_advice(const rf_text& kind, const rf_text& text, const rf_text& source,
                      const Bibliography& sources);

} // namespace ringfill
