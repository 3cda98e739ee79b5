#pragma once

#include <string>
#include <vector>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/report/draw/svg.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The field of the paper that a curve of temperatures is drawn in [mm], and its scales.
struct CurveFrame {
    double left = 15;
    double right = 58.5;
    double top = 2.5;
    double bottom = 43;
    double end_s = 0; ///< time at the right edge
    double low = 0;   ///< temperatures at the bottom and the top [K]
    double high = 0;

    double x(double seconds) const { return left + (right - left) * seconds / end_s; }
    double y(double kelvin) const { return bottom - (bottom - top) * (kelvin - low) / (high - low); }
};

/// Round values from low to high, at most `most` of them: multiples of 1, 2 or 5 times a power of ten.
std::vector<double> round_steps(double low, double high, int most);

/// The curve on the paper. Of the points that fall on one hair's breadth the first, the hottest, the coldest
/// and the last are kept, so that no peak is lost.
std::string curve_path(const CurveFrame& frame, const std::vector<CurvePoint>& curve);

/// Draws both axes with round degrees and round hours.
void draw_axes(Svg& svg, const CurveFrame& frame, UnitSystem units);

/// Rows under a curve, one for each kind of step that either run has, with a bar where it takes place: for
/// the run with nothing that carries heat off, or the only one, thick and above; for the one with a plate
/// thin and below. @return y below the rows [mm].
double draw_stage_rows(Svg& svg, const CurveFrame& frame, const HeatBalance& balance, double y);

} // namespace ringfill
