#pragma once

#include <string>

#include "question.hpp"

namespace ringfill::steel {

/// Heat after welding stays this far under the temperature the metal was tempered at [K]. Common practice, no
/// source.
inline constexpr double under_tempering_K = 50;

/// The coolest hold that still drives hydrogen out in hours [°C]. Common practice, no source.
inline constexpr double least_release_degC = 200;

/// The hold that releases hydrogen (EN 1011-2:2001 C.3, memory) [°C].
inline constexpr double release_degC = 250;

/// Whether a metal was tempered so low, or softens under so little heat, that none is left for it to release
/// hydrogen, such as wear plate of 400 HB; such metal is neither held hot nor cooled slowly. Metal of which
/// neither is known does not.
bool tempered_low(const Asked& asked);

/// "it was tempered at 200 °C (392 °F), and heat within 50 K of that softens it", or "it is quenched, and
/// heat over 225 °C (437 °F) softens it"; for metal that is tempered_low().
std::string why_tempered_low(const Asked& asked);

/// A temperature for people in both scales, whole degrees, rounded down: 250 °C (482 °F).
std::string show_both(double degC);

/// The same rounded up, for a figure that must be reached.
std::string show_at_least(double degC);

} // namespace ringfill::steel
