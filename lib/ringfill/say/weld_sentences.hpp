#pragma once

#include <string>
#include <string_view>

#include <ringfill/plan/plan.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// Procedure, filler, and what stays the same through all layers of a bore.
std::string settings_sentence(const BorePlan& bore, UnitSystem units);

/// How filler and base metal of a bore go together: whether the one suits the other and why, how much is
/// deposited, dilution by layer, ferrite of stainless layers.
Sentences metal_sentences(const BorePlan& bore);

} // namespace ringfill
