#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/sentence.hpp>
#include <ringfill/report/text/style.hpp>

namespace ringfill {

/// The heat of one bore step by step: what it takes in all, then the warm-up, each layer, each stop and
/// reheat with the ring it comes after, the hold, and the cooling to where roughing and finishing may begin.
/// Where two runs stand at the ends of what may be, both are told. A long list keeps its two ends. Empty
/// without a balance.
std::string time_text(const BorePlan& bore, UnitSystem units);

/// What it takes in all, and what was reckoned with; empty without a balance.
Sentences time_sentences(const BorePlan& bore, UnitSystem units);

/// Where a step stands: "after bore layer 2 ring 14"; empty before the first ring and after the last.
std::string place_of(const HeatStep& step);

/// "… 212 steps more, 105 stops and 1 reheat among them": the steps from `begin` to before `end`.
std::string left_out(const HeatRun& run, std::size_t begin, std::size_t end);

/// The same with the curve of the run that asks for the most stops.
std::string time_and_curve(const BorePlan& bore, UnitSystem units);

} // namespace ringfill
