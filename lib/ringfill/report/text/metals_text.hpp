#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// How filler and base metal of a bore go together, in paragraphs: whether the one suits the other and why,
/// how much is deposited, dilution by layer, ferrite of stainless layers.
std::string metals_text(const BorePlan& bore);

} // namespace ringfill
