#pragma once

#include <cstddef>
#include <vector>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Radius from the target axis to a circle of radius r whose centre lies off the axis by e towards a clock
/// position, e cos φ + √(r² − e² sin² φ) with φ measured from that position [m]. Exact for e < r.
Length eccentric_radius(Length r, Length e, Angle from_offset);

/// A radius and the clock position it stands at, clockwise from 12 o'clock, seen from the near face.
struct ClockRadius {
    Length radius;
    Angle clock;
};

/// Section inside an outline given by N radii at equal clock steps, (π/N) Σ r² [m²]: the trapezoid rule on
/// ½∮r²dθ, exact while the outline has lobes of fewer than N/2 waves.
Area section(const std::vector<Length>& radii);

/// The trigonometric polynomial through N radii at equal clock steps from 12 o'clock; for even N the Nyquist
/// term is a pure cosine. It shows the deepest wear between the readings, as far as N readings can.
struct Interpolant {
    /// At least one radius. One reading is a circle.
    explicit Interpolant(const std::vector<Length>& radii);

    /// The radius at a clock position [m].
    Length operator()(Angle clock) const;

    Length mean; ///< radius
    /// The coefficients of cos(jθ) and sin(jθ), j = 1, 2, … [m]; the last cosine of an even N is the Nyquist
    /// term, its sine is 0.
    std::vector<Length> cosines;
    std::vector<Length> sines;
};

/// The equal angles from 12 o'clock that an extreme radius is searched on.
inline constexpr int search_angles = 720;

/// The extreme radii of an outline [m]: of the interpolant on 720 equal angles from 12 o'clock, and of the
/// readings.
struct Extremes {
    ClockRadius largest;
    ClockRadius smallest;
};

/// Both from one search. At least one radius.
Extremes extremes(const std::vector<Length>& radii);

/// The stations of a worn surface, all of them with radii from the target axis at equal clock steps from 12
/// o'clock; none where one diameter stands for the bore. Of a two-point diameter half stands at its clock
/// position and half at the one opposite, then moved by the offset, which is exact for a round outline.
std::vector<WornStation> stations_of(const Worn& worn);

/// What the survey of a worn bore says (section 1 of the computation).
struct Survey {
    ClockRadius largest = {};         ///< r_max
    ClockRadius smallest = {};        ///< r_min
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
Volume worn_volume(const std::vector<WornStation>& stations, Length length);

/// Surveys a worn surface over a bore of that length.
Survey survey(const Worn& worn, Length length);

} // namespace ringfill
