#pragma once

#include <string>
#include <string_view>

#include <ringfill/material/abi.h>
#include <ringfill/material/answer.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// Thrown between checking and the sink that keeps it; never into a plugin.
struct BrokenRule {
    std::string what;
    std::string remedy;
};

/// A copy of a text that a plugin gives; `what` names it in the breach. Throws BrokenRule when it is null
/// with a size, too long, not UTF-8 or not clean.
std::string checked_text(const rf_text& text, std::string_view what);

/// The same; an empty text is a breach too.
std::string checked_name(const rf_text& text, std::string_view what);

/// The key of a source that the bibliography has. `whose`: what it is the source of.
std::string checked_source(const rf_text& key, std::string_view whose, const Bibliography& sources);

/// A copy of a value, by its name from the list in abi.h. Throws BrokenRule.
AnsweredFigure checked_value(const rf_figure* figure, const Bibliography& sources);

/// A copy of a method. Throws BrokenRule.
AnsweredMethod checked_method(const rf_figure* figure, const Bibliography& sources);

/// A copy of an advice. Throws BrokenRule.
Advice checked_advice(const rf_text& kind, const rf_text& text, const rf_text& source,
                      const Bibliography& sources);

} // namespace ringfill
