#pragma once

#include <string>
#include <vector>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/report/draw/curve_frame.hpp>

namespace ringfill {

/// Rows under a curve, one for each kind of step that either run has, with a bar where it takes place: for
/// the run with nothing that carries heat off, or the only one, thick and above; for the one with a plate
/// thin and below. @return y below the rows [mm].
double draw_stage_rows(Svg& svg, const CurveFrame& frame, const HeatBalance& balance, double y);

} // namespace ringfill
