#pragma once

#include <string>
#include <string_view>
#include <utility>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// What stands where limits of size would.
inline constexpr std::string_view no_size_limits = "the job gives neither size_class nor size_limits";

/// A kind of cut, or a step between the cuts, as people call it; another name as it is.
std::string_view words_for(std::string_view name);

/// The diameters before and after a cut; near the finished size in its digits.
std::pair<std::string, std::string> shown_diameters(const Cut& cut, UnitSystem units);

/// Bar speed and feed of a bore.
Sentence bar_sentence(const BorePlan& bore, UnitSystem units);

/// What follows the cuts of a bore and its size: grooves, roughness, time.
Sentences boring_sentences(const BoringPlan& boring, UnitSystem units);

} // namespace ringfill
