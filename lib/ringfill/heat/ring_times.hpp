#pragma once

#include <string>
#include <vector>

#include <ringfill/job/procedure.hpp>
#include <ringfill/weld/face_pad.hpp>
#include <ringfill/weld/groove_fill.hpp>
#include <ringfill/weld/passes.hpp>

namespace ringfill {

/// The rings of one layer of one pass, in the order they are laid.
struct RingPass {
    std::string pass; ///< "groove 1", "bore", "face 2"
    int layer = 1;
    std::vector<Time> rings; ///< arc time of each ring, or of each turn of a helix
};

/// More rings than this in one bore are not followed one by one.
inline constexpr std::size_t most_rings_followed = 20'000;

/// Every ring of a bore in the sequence of the work: grooves, bore, faces. A helix counts its turns and the
/// closing ring; a groove its path in turns of its floor, all alike. Empty when there are more than
/// most_rings_followed.
std::vector<RingPass> ring_times(const std::vector<Groove>& grooves, const std::vector<GrooveFill>& fills,
                                 const std::vector<Layer>& layers, const Bead& bead, TorchPath path,
                                 const std::vector<FacePad>& faces);

} // namespace ringfill
