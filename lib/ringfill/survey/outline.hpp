#pragma once

#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

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
class Interpolant {
  public:
    /// At least one radius. One reading is a circle.
    explicit Interpolant(const std::vector<Length>& radii);

    /// The radius at a clock position [m].
    Length operator()(Angle clock) const;

    /// The mean radius and the coefficients of cos(jθ) and sin(jθ), j = 1, 2, … [m]; the last cosine of an
    /// even N is the Nyquist term, its sine is 0.
    Length mean() const { return mean_; }
    const std::vector<Length>& cosines() const { return cosines_; }
    const std::vector<Length>& sines() const { return sines_; }

  private:
    Length mean_;
    std::vector<Length> cosines_;
    std::vector<Length> sines_;
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

} // namespace ringfill
