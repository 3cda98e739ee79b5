#pragma once

#include <optional>
#include <vector>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// Everything that has a say on the preheat of one case, each marked whether it may rule.
struct GatheredMethods {
    std::vector<PreheatMethod> methods;
    std::vector<AnsweredFigure> values;
    std::optional<FillerRange> filler_range;
};

/// Looks into the tables that list the grade and asks the family's plugin, see preheat().
GatheredMethods gather_methods(const HeatCase& what);

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

/// Lets the minimum of an approved procedure rule, no lower than the chill-off temperature. The methods stay
/// beside it; that one of them asks for preheat is not forgotten.
void let_approved_minimum_rule(Preheat& preheat, const Approved& approved);

/// Lets its interpass maximum and its post-heat rule, once the family has had its say. What they take the
/// place of is kept where it is the more careful, see Overruled.
void let_approved_rest_rule(Preheat& preheat, const HeatCase& what, const Approved& approved);

} // namespace ringfill
