#include <ringfill/heat/stitches.hpp>

#include <algorithm>
#include <cmath>

namespace ringfill {
namespace {

constexpr double stitch_share = 2.0 / 3;

int stitches_of(const RingPass& pass) {
    const Time longest =
        pass.rings.empty() ? Time() : *std::max_element(pass.rings.begin(), pass.rings.end());
    return std::max(1, static_cast<int>(std::ceil((longest * pass.travel / longest_stitch).value() - 1e-9)));
}

} // namespace

std::vector<RingPass> in_stitches(const std::vector<RingPass>& passes) {
    std::vector<RingPass> stitched = passes;
    for (RingPass& pass : stitched) {
        const int a_ring = stitches_of(pass);
        std::vector<Time> rings;
        rings.reserve(pass.rings.size() * static_cast<std::size_t>(a_ring));
        for (const Time& ring : pass.rings)
            rings.insert(rings.end(), static_cast<std::size_t>(a_ring), ring / static_cast<double>(a_ring));
        pass.rings = std::move(rings);
        pass.stitches_a_ring = a_ring;
        pass.is_helix = false;
    }
    return stitched;
}

Temperature stitch_begins_under(Temperature air, Temperature maximum) {
    return in_si<Temperature>(air.value() + stitch_share * (maximum - air).value());
}

} // namespace ringfill
