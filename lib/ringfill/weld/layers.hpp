#pragma once

#include <optional>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/survey/skim.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// How many layers fill a ring, and how the bead is scaled so that they come out even (section 5).
struct Layering {
    int layers = 0;   ///< n
    double scale = 1; ///< κ as laid
    /// κ*, the scale that would end on r_t; the same unless the travel was too fast for it.
    double even_scale = 1;
    Length end_radius; ///< r_end; r_t unless the travel was too fast
};

/// More layers than this are refused: the bead is far too small for the ring.
inline constexpr int most_layers = 100;

/// The radius before each of n layers and after the last one, n + 1 radii [m]; fewer when the ring closes. A
/// layer laid at radius r ends at √(r² − 2 h r) with h = A/p: a turn of bead fills a ring that gets tighter,
/// and closes it where r ≤ 2 h.
std::vector<Length> layer_radii(Length start, Length layer_height, int layers);

/// Lays even layers from r_s to r_t: the fewest that reach it at κ = 1, then the κ ≤ 1 that ends on it, or,
/// if that would need a faster travel than the limit, κ = √(v₀/v_max). Nothing comes back when the ring
/// closes or needs more than `most_layers`.
/// @param unscaled the bead at κ = 1. @param travel_limit v_max, at least v₀.
std::optional<Layering> lay_layers(Length start, Length target, const Bead& unscaled, Speed travel_limit);

/// One layer as it is laid.
struct Layer : Pass {
    Length radius_before;
    Length radius_after;
    int rings = 0;
    Turning torch;
};

} // namespace ringfill
