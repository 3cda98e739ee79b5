#pragma once

#include <vector>

#include "question.hpp"

namespace ringfill::steel {

/// Least preheat by EN 1011-2 method B [°C]: 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - 328,
/// with CET in [%], the wall d in [mm], hydrogen HD in [ml/100 g] (ISO 3690) and heat input Q in [kJ/mm].
/// Made for CET 0.20 to 0.50, d 10 to 90, HD 1 to 20, Q 0.5 to 4.0. Rises with CET, d and HD; falls with Q
/// while CET is under 32/53. Nothing is clamped here. Source: EN 1011-2:2001 with A1:2003, C.3.2.5 (memory).
/// SEW 088 Supplement 1 prints 700 CET and -330, 0.5 to 1.4 °C less over its range; the higher is taken.
double method_b_degC(double cet_pct, double wall_mm, double hydrogen_ml_100g, double heat_input_kJ_mm);

/// What method B says: CET, wall and heat input outside its range count at the nearest edge, marked; hydrogen
/// runs on to 30 ml/100 g, and over that it gives no figure. Where Cr, Mo or Ni lies outside its table it is
/// a second opinion at its edge, which rules only where no document does. The CET used is the largest that
/// the limits reach, or the deposit's and 0.03 if that is more (C.3, memory). What is not known is taken at
/// the end of the range that asks for more.
Figure method_b(const Asked& asked);

} // namespace ringfill::steel
