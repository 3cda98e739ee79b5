#pragma once

#include <optional>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// More set-ups of the bar for one bore than this are refused: the stroke cannot be meant.
inline constexpr int most_set_ups = 100;

/// Set-ups that a welded length needs with the stroke of the bar, ⌈L_w/stroke − 1e-9⌉; 1 where the job gives
/// no stroke. More than `most_set_ups` come back as `most_set_ups` + 1.
int set_ups(Length welded_length, std::optional<Length> stroke);

} // namespace ringfill
