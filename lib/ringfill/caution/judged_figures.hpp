#pragma once

#include <ringfill/caution/judged.hpp>

namespace ringfill {

/// Judges a trigger that compares a figure with limits; no for any other.
Judged judged_figure(const Trigger& trigger, const WorkFacts& facts);

} // namespace ringfill
