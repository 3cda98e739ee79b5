#pragma once

#include <cstddef>

#include <ringfill/job/worn.hpp>
#include <ringfill/survey/outline.hpp>
#include <ringfill/survey/station.hpp>

namespace ringfill {

/// What the survey of a worn bore says (section 1 of the computation).
struct Survey {
    ClockRadius largest;              ///< r_max
    ClockRadius smallest;             ///< r_min
    Volume worn_volume;               ///< V_worn, inside the worn surface over the length of the bore
    std::size_t readings = 0;         ///< round the bore at each station; 0 when one diameter stands for all
    std::size_t largest_station = 0;  ///< where r_max stands
    std::size_t smallest_station = 0; ///< where r_min stands
    bool two_point = false;           ///< from two-point diameters, which never show three-lobed wear
};

/// Whether one diameter on the target axis stands for the whole bore: then nothing is known of the places of
/// the wear.
bool is_same_all_round(const Survey& survey);

/// Volume inside the worn surface over the length L [m³]. Between two stations the radius is linear in depth
/// at each clock reading, Δz (r_a² + r_a r_b + r_b²)/3; before the first and after the last it is constant.
/// One station holds for the whole length.
Volume worn_volume(const std::vector<Station>& stations, Length length);

/// Surveys a worn surface over a bore of that length.
Survey survey(const Worn& worn, Length length);

} // namespace ringfill
