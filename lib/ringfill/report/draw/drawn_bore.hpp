#pragma once

#include <algorithm>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/svg.hpp>
#include <ringfill/survey/worn_surface.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/units/show.hpp>

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

/// A bore as its drawings show it. Radii in millimetres.
struct DrawnBore {
    const WornBore& bore;
    const BorePlan& plan;
    UnitSystem units;
    WornOutline worn;
    bool skimmed;
    double skim;    ///< r_s; without a skim the largest worn radius
    double finish;  ///< r_f
    double target;  ///< r_t, what is to be welded to
    double weld_to; ///< r_end, what the weld comes to at the deepest wear
    double end;     ///< what the last layer comes to; without a skim on average, and so inside r_end
    std::vector<double> layers; ///< after each layer
    std::optional<double> boss;
    ClockRadius deepest;

    /// What is drawn for the outside of the boss: half as much again as the bore where it is not given.
    double outside() const { return boss.value_or(1.5 * skim); }
    /// Whether the last layer ends inside what was to be welded to, because the travel could not be faster,
    /// by as much as a person reads.
    bool passes_target() const { return target - weld_to > 0.05; }
    /// Whether the layers are counted on average, because the worn surface is not round.
    bool is_average() const { return weld_to - end > 0.05; }
    /// Height of the lowest layer.
    double least_layer() const;
    /// Every so many layers have a label, four at most.
    std::size_t labelled_layers_step() const;
    /// How far into the wall the details reach.
    double detail_outer() const { return std::min(skim + 0.3 * (skim - end), outside()); }

    /// "Ø 96.2 mm" from a radius, held together.
    std::string diameter(double radius_mm) const;
    std::string diameter(Length across) const { return diameter(mm(across) / 2); }
    /// A length, held together.
    std::string length(Length length) const;
    /// What the drawings say of skim, layers, weld and finish, in a sentence or two.
    std::string sizes_in_words() const;
};

DrawnBore drawn_bore(const WornBore& bore, const BorePlan& plan, UnitSystem units);

/// "135° (4:30)": a clock position in degrees, and as the hands of a clock show it.
std::string clock_text(Angle clock);

/// The thin line of a layer boundary, thinner where layers lie close [spacing in mm of paper].
Pen layer_pen(double spacing);

/// The point of the paper at a radius of a hole, on one of its sides (-1, 1) or its axis (0).
using HolePoint = std::function<PaperPoint(double radius, double side)>;

/// Draws a hole as a strip through the wall, from a radius on; one whose other end is blind or not known goes
/// half as far, open. @param scale mm of paper for a millimetre
void draw_hole(Svg& svg, const DrawnBore& drawn, const Hole& hole, double from, double scale,
               const HolePoint& at);

} // namespace ringfill
