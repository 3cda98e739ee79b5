#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>
#include <ringfill/report/text/sentence.hpp>

namespace ringfill {

/// The kinds of cuts as people call them.
std::string words_for(CutKind kind);

/// Bar speed and feed of a bore.
std::string bar_sentence(const BorePlan& bore, UnitSystem units);

/// What follows the cuts of a bore and its size: grooves, roughness, time.
Sentences boring_sentences(const BoringPlan& boring, UnitSystem units);

/// How each bore is cut, bore by bore: speed, feed, every cut with its diameters, limits, gauge readings,
/// time and edges. Each figure is for one bore. Under 80 columns, in the plan's units.
std::string boring_text(const Plan& plan, const Style& style);

} // namespace ringfill
