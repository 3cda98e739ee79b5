#pragma once

#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// The sentences at the head of every view: first what stops the work, then what looks mistyped, what tables
/// of the user replace, the approved procedures, and for each bore how hot it must be and may get.
Sentences head_sentences(const Plan& plan);

/// Of them, what looks mistyped and what tables of the user replace: for views that do not tell of heat.
Sentences doubt_sentences(const Plan& plan);

/// What tables of the user replace, a sentence for each part of a file: TABLE mine/cutting.json replaces in
/// cutting: "rough_below_degC".
std::vector<std::string> replaced_in_words(const std::vector<ReplacedRow>& tables);

/// Minimum and maximum as people read them; they were rounded where they were decided.
struct ShownLimits {
    std::string minimum;
    std::string maximum; ///< empty: there is none
};

/// Of a preheat that is known or needed.
ShownLimits shown_limits(const Preheat& preheat, UnitSystem units);

/// "at least 260 °C; no ring begins over 350 °C", "none, dry and hand-warm; …", or why there is no figure.
Sentence heat_limits(const BoreHeat& heat, UnitSystem units);

/// Who can open a window that is closed.
std::string_view who_settles(const Preheat& contradictory);

} // namespace ringfill
