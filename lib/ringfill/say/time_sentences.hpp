#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// "1 rest", "3 rests".
std::string counted(std::int64_t count, std::string_view thing);

/// Where a step stands: "after bore layer 2 ring 14"; empty before the first ring and after the last.
std::string place_of(const HeatStep& step);

/// "… 212 steps more, 105 rests and 1 reheat among them": the steps from `begin` to before `end`.
std::string left_out(const HeatRun& run, std::size_t begin, std::size_t end);

/// What the heat of a bore takes in all, and what it was worked out with. @param arc that burns on it.
Sentences time_sentences(const HeatBalance& balance, Time arc, UnitSystem units);

} // namespace ringfill
