#pragma once

#include <algorithm>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/labels.hpp>
#include <ringfill/survey/worn_surface.hpp>
#include <ringfill/units/metric.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The worn surface as it is drawn.
class WornOutline {
  public:
    WornOutline(const WornBore& bore, const Survey& survey);

    /// How many equal clock steps from 12 o'clock the outline is drawn in: 360 or more, every clock reading
    /// on one of them.
    int steps() const;
    /// The radius at a clock position of the station with the largest radius [m].
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
    std::size_t readings_;
    Length round_;    ///< radius, when there is no station
    ClockRadius off_; ///< its centre
};

/// The rings of each layer, from the near face on [mm].
struct RingRow {
    double begin; ///< depth where the first ring begins, the overhang before the near face
    double pitch;
    int rings;
    double valley; ///< of the beads' crowns over the valleys

    double end() const { return begin + pitch * rings; }
};

/// A bore as its drawings show it. Radii in millimetres.
struct DrawnBore {
    const WornBore& bore;
    const BorePlan& plan;
    UnitSystem units;
    WornOutline worn{bore, plan.survey};
    ClockRadius deepest = plan.survey.largest;
    bool skimmed = plan.build.skimmed;
    double skim = mm(plan.build.skim_radius);         ///< r_s; without a skim the largest worn radius
    double finish = mm(plan.build.finish_radius);     ///< r_f
    double target = mm(plan.build.weld_to_radius);    ///< r_t, what is to be welded to
    double weld_to = mm(plan.layering.end_radius);    ///< r_end, what the weld comes to at the deepest wear
    double end = mm(plan.layers.back().radius_after); ///< what the last layer comes to; without a skim on
                                                      ///< average, and for that inside r_end
    bool has_boss = bore.boss_diameter.has_value();
    /// What is drawn for the outside of the boss: half as much again as the bore where it is not given.
    double outside = has_boss ? mm(*bore.boss_diameter) / 2 : 1.5 * skim;
    RingRow row{-mm(bore.overhang), mm(plan.bead.pitch), plan.layers.front().rings, mm(plan.bead.valley)};

    std::size_t layers() const { return plan.layers.size(); }
    /// The radius after a layer, from 1 on; layer 0 is the skim.
    double layer(std::size_t n) const { return n == 0 ? skim : mm(plan.layers[n - 1].radius_after); }
    /// Whether the last layer ends inside what was to be welded to, because the travel could not be faster,
    /// by as much as a person reads.
    bool passes_target() const { return target - weld_to > 0.05; }
    /// Whether the layers are counted on average, because the worn surface is not round.
    bool is_average() const { return weld_to - end > 0.05; }
    /// Height of the lowest layer.
    double least_layer() const;
    /// Whether a layer has a label: the first, and four more at most.
    bool is_labelled(std::size_t layer) const;
    /// How far into the wall the details reach.
    double detail_outer() const { return std::min(skim + 0.3 * (skim - end), outside); }
    /// Whether a detail shows the outside of the boss.
    bool detail_has_boss() const { return has_boss && outside <= detail_outer(); }

    /// "Ø 96.2 mm" from a radius, held together.
    std::string diameter(double radius_mm) const { return "Ø\u00A0" + length(millimetres(2 * radius_mm)); }
    std::string diameter(Length across) const { return diameter(mm(across) / 2); }
    /// A length, held together.
    std::string length(Length length) const { return held_together(show(length, units)); }
    /// What the drawings say of skim, layers, weld and finish, in a sentence or two.
    std::string sizes_in_words() const;
};

/// "135° (4:30)": a clock position in degrees, and as the hands of a clock show it.
std::string clock_text(Angle clock);

/// The thin line of a layer boundary, thinner where layers lie close [spacing in mm of paper].
inline Pen layer_pen(double spacing) {
    return {std::clamp(0.3 * spacing, 0.04, thin_pen.width), {}};
}

/// The point of the paper at a radius of a hole, on one of its sides (-1, 1) or its axis (0).
using HolePoint = std::function<PaperPoint(double radius, double side)>;

/// Draws a hole as a strip through the wall, from a radius on; one whose other end is blind or not known goes
/// half as far, open. @param scale mm of paper for a millimetre
void draw_hole(Svg& svg, const DrawnBore& drawn, const Hole& hole, double from, double scale,
               const HolePoint& at);

} // namespace ringfill
