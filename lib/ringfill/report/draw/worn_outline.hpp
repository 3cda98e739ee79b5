#pragma once

#include <optional>
#include <vector>

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/survey/worn_surface.hpp>

namespace ringfill {

/// The worn surface as it is drawn.
class WornOutline {
  public:
    WornOutline(const WornBore& bore, const Survey& survey);

    /// The outline of the station with the largest radius at equal clock steps from 12 o'clock, 360 or more,
    /// among them every clock reading [m].
    std::vector<Length> radii() const;
    /// The radius of that outline at a clock position [m].
    Length radius(Angle clock) const;
    /// The radius at a clock position and a depth: linear between two stations, constant before the first and
    /// after the last [m].
    Length radius(Angle clock, Length depth) const;
    /// How far the centre of the mean circle lies off the target axis and towards which clock position: as
    /// the job gives it, or the first harmonic of the readings. Nothing when it is on the axis, or when there
    /// are too few readings to tell.
    std::optional<ClockRadius> centre() const;

  private:
    std::vector<Length> depths_; ///< of the stations; empty for one diameter
    std::vector<Interpolant> stations_;
    std::size_t largest_station_;
    std::size_t readings_ = 0;
    WornDiameter round_; ///< when there is no station
};

} // namespace ringfill
