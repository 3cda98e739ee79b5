#pragma once

#include <optional>

#include "question.hpp"

namespace ringfill::steel {

/// Greatest combined thickness that EN 1011-2 Table C.1 lets be welded without preheat [mm], for a
/// CE(IIW) [%], diffusible hydrogen [ml/100 g] and heat input [kJ/mm]. The carbon equivalent is read at the
/// next printed one above, the heat input at the next below, the limits of hydrogen are inclusive. Nothing
/// for a carbon equivalent over 0.49 or a heat input under 1.0. Source: EN 1011-2:2001 with A1:2003, Table
/// C.1 (read).
std::optional<double> table_c1_mm(double ce_pct, double hydrogen_ml_100g, double heat_input_kJ_mm);

/// What Table C.1, the printed part of method A, says: none needed, or needed without a figure. Not usable
/// outside its columns, and for a base metal outside the range of method A (C.2.1, memory). Unknown hydrogen
/// is taken as over 15 ml/100 g, an unknown combined thickness as 100 mm.
Figure table_c1(const Asked& asked);

} // namespace ringfill::steel
