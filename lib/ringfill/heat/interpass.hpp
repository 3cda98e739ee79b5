#pragma once

#include <optional>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

// Where no document gives an interpass maximum: no more than this over the minimum, never over this, and well
// under the temperature the metal was tempered at [common practice, no source].
inline constexpr double usual_range_K = 100;
inline const Temperature usual_maximum = in_si<Temperature>(623.15);
inline constexpr double below_tempering_K = 50;

/// Stainless weld metal is welded no hotter than this, 175 to 200 °C [common practice, no source].
inline const Temperature stainless_maximum = in_si<Temperature>(448.15);

/// How hot metal that was quenched or tempered may get before it softens; nothing when that is not known.
std::optional<AskedTemperature> softens_over(const HeatCase& what);

/// The highest temperature to begin a ring at: the lowest that a document asks for the grade, else the usual
/// one. Nothing when neither is known, nor a usual one while preheat is asked for without a figure.
std::optional<AskedTemperature> interpass_maximum(const HeatCase& what,
                                                  const std::optional<AskedTemperature>& minimum,
                                                  const std::vector<PreheatMethod>& methods,
                                                  const std::vector<AnsweredFigure>& values);

} // namespace ringfill
