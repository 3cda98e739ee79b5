#pragma once

#include <optional>
#include <vector>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A retaining groove cut again after boring.
struct GrooveCut {
    std::size_t groove; ///< which of the bore's, from 0
    Length depth;       ///< of its floor under the finished bore
    Length weld_left;   ///< under its floor: finished weld − depth; less than nothing: parent metal is met
};

/// The grooves of a bore that are deeper than its finish; a shallower one is none.
/// @param finish_radius r_f. @param finished_weld weld per side left after boring, on the thinnest side.
std::vector<GrooveCut> groove_cuts(const std::vector<Groove>& grooves, Length finish_radius,
                                   Length finished_weld);

} // namespace ringfill
