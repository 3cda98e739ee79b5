#include <ringfill/boring/facing.hpp>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/boring/cutting_time.hpp>

namespace ringfill {

Facing facing(const Face& face, const FacePad& pad, Length stock, Length overhang, const FacingHead& head) {
    Facing cut;
    cut.depth = stock + pad.extra_build + pad.bead.valley;
    cut.cuts = rough_cuts(cut.depth, head.rough_cut);
    cut.way = (face.outer - face.inner) / 2.0 + 2.0 * overhang;
    cut.bar = bar_speed(head.cutting_speed, face.outer + 2.0 * overhang, head.bar_speeds);
    cut.feed = head.feed;
    cut.time = static_cast<double>(cut.cuts) * cutting_time(cut.way, head.feed, cut.bar.used);
    return cut;
}

} // namespace ringfill
