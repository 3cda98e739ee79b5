#include <ringfill/boring/groove_cut.hpp>

namespace ringfill {

std::vector<GrooveCut> groove_cuts(const std::vector<Groove>& grooves, Length finish_radius,
                                   Length finished_weld) {
    std::vector<GrooveCut> cuts;
    for (std::size_t i = 0; i < grooves.size(); ++i) {
        const Length depth = grooves[i].diameter / 2.0 - finish_radius;
        if (depth > Length())
            cuts.push_back({i, depth, finished_weld - depth});
    }
    return cuts;
}

} // namespace ringfill
