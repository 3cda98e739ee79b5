#pragma once

#include <string>
#include <utility>
#include <vector>

#include <ringfill/weld/bore_weld.hpp>

namespace ringfill {

/// The rings of one layer of one pass, in the order they are laid.
struct RingPass {
    std::string pass; ///< "groove 1", "bore", "face 2"
    int layer = 1;
    std::vector<Time> rings; ///< arc time of each ring, or of each turn of a helix
    Length from = {};        ///< the part of the bore that takes up its heat, by depth
    Length to = {};
    bool side_by_side = true; ///< its rings share that part; else each heats all of it
    bool is_helix = false;    ///< turns without a pause, the last of them the closing ring
    Speed travel = {};        ///< as laid
    int stitches_a_ring = 1;  ///< over 1: `rings` holds the stitches
};

/// The part of the bore that one ring heats. The closing ring of a helix lies on its last turn.
/// @param ring from 0, under the number of rings.
std::pair<Length, Length> heated_band(const RingPass& pass, std::size_t ring);

/// More rings than this in one bore are not followed one by one.
inline constexpr std::size_t most_rings_followed = 20'000;

/// Every ring of a bore in the sequence of the work: grooves, bore, faces. A helix counts its turns and the
/// closing ring; a groove its path in turns of its floor, all alike. The rings of a layer are spread over the
/// length; those of a face heat one pitch at its end, the second face's at the far end; those of a groove a
/// band of its width at mid length, since nobody tells its place. Empty when there are more than
/// most_rings_followed.
std::vector<RingPass> ring_times(const WornBore& bore, const BoreWeld& weld);

/// More rings than this in all bores together (each bore once) are not followed one by one, in no bore.
inline constexpr std::size_t most_rings_of_a_job = 100'000;

/// The rings of all bores where they are few enough to be followed one by one in one job; else none of any.
std::vector<std::vector<RingPass>> if_followed(std::vector<std::vector<RingPass>> bores);

} // namespace ringfill
