#pragma once

#include <string>
#include <string_view>

#include <fmt/format.h>

#include <ringfill/material/abi.h>
#include <ringfill/material/answer.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A rule of the interface that a plugin broke, or its refusal. Thrown within the host only, never into a
/// plugin.
struct Breach {
    std::string what; ///< as the rest of the sentence "NAME ..."
    std::string remedy;
    std::string words = {}; ///< the plugin's own
};

/// Throws Breach if a rule is broken.
template <class... Parts>
void refuse_if(bool broken, std::string_view remedy, fmt::format_string<const Parts&...> what,
               const Parts&... parts) {
    if (broken)
        throw Breach{fmt::format(what, parts...), std::string(remedy)};
}

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
