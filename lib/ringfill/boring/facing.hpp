#pragma once

#include <vector>

#include <ringfill/boring/bar_speed.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/weld/face_pad.hpp>

namespace ringfill {

/// A built-up boss face cut flat with a facing head.
struct Facing {
    Length depth; ///< from the crowns to the finished face
    int cuts = 0;
    Length way; ///< of one cut, across the pad
    BarSpeed bar;
    Length feed; ///< per revolution
    Time time;   ///< of all cuts
};

/// How a facing head is run.
struct FacingHead {
    Speed cutting_speed;
    Length feed;
    Length rough_cut;
    std::vector<Turning> bar_speeds;
};

/// Faces a pad from its inner to its outer edge, past both by the overhang: the stock, what was built over
/// it, and the crowns, at most the valley depth over the layer. The speed is that of the outer edge.
Facing facing(const Face& face, const FacePad& pad, Length stock, Length overhang, const FacingHead& head);

} // namespace ringfill
