#pragma once

#include <ringfill/job/procedure.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// How far a closed ring runs over its own start, 10° [common practice, no source].
inline constexpr double closing_overlap_deg = 10;
inline constexpr double closing_overlap = closing_overlap_deg / 360; // of a turn

/// Rings a layer over a welded length at a pitch, ⌈L_w/p − 1e-9⌉.
int rings_a_layer(Length welded_length, Length pitch);

/// Way of one closed ring at a radius, 2πr (1 + ω/360) [m].
Length ring_path(Length radius);

/// Way of one layer [m]: N closed rings, or a helix of N turns and one closing ring at the far end,
/// N √((2πr)² + p²) + 2πr.
Length layer_path(TorchPath kind, int rings, Length radius, Length pitch);

/// Torch speed that gives a travel speed at a radius, v/(2πr) [rev/s].
Turning torch_speed(Speed travel, Length radius);

} // namespace ringfill
