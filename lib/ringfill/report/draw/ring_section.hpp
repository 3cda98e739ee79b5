#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/svg.hpp>
#include <ringfill/report/draw/worn_outline.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The radii that the drawings of a bore show [mm].
struct RingSection {
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
    /// Whether the layers are told on average, because the worn surface is not round.
    bool is_average() const { return weld_to - end > 0.05; }
};

/// Height of the lowest layer [mm].
double least_layer(const RingSection& section);

RingSection ring_section(const WornBore& bore, const BorePlan& plan);

/// "Ø 96.2 mm" from a radius, held together.
std::string diameter_text(double radius_mm, UnitSystem units);
/// "135° (4:30)": a clock position in degrees, and as the hands of a clock show it.
std::string clock_text(Angle clock);
/// A length, held together.
std::string length_text(Length length, UnitSystem units);

/// The thin line of a layer boundary, thinner where layers lie close [spacing in mm of paper].
Pen layer_pen(double spacing);

/// The edges of a hole, thinner where they lie close [width in mm of paper]. Broken: nobody says where it
/// goes.
Pen hole_pen(bool goes_through, double width);

/// Every so many layers have a label, four at most.
int labelled_layers_step(std::size_t layers);

/// What the drawings tell of skim, layers, weld and finish, in a sentence or two.
std::string sizes_in_words(const RingSection& section, UnitSystem units);

} // namespace ringfill
