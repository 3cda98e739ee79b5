#pragma once

#include <optional>
#include <vector>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

// Who rules: practice of the grade, tables that list it, rules of the plugin, the
// row for unknown metal; the highest that applies, never under hand-warm.
// * A method outside its *composition* is information where the grade's own practice holds in every respect,
//   also when the wall is outside too; else it counts at its edge (method B). Outside its *wall* alone, and
//   past the last group of the hydrogen annex, it counts at its edge always.
// * A row or table made for less hydrogen than there is, for a grade that the certificate denies, or whose
//   list ends before the wall (or may, when the wall is not known) still counts, with its hottest row in the
//   last case, as the least.
// * The row for unknown metal joins where no table that holds in every respect lists the grade and a method
//   stands at its edge (but not for a wall that is only too thin: the thinnest of its range asks for more
//   already) or the wall is not known, where the certificate is of another steel, where practice ends before
//   the wall, and where nothing else applies.
// * What is not known: wall, hydrogen, heat input are taken for the worst;
//   tests/identity/preheat_knowledge_test.cpp asks that knowing less, a thicker wall, more hydrogen or a
//   certificate over the grade never lower the answer of any grade. A certificate *leaner* than the grade
//   can raise it: method B, back within its range, may ask for more than practice.
// * A certificate replaces the table element by element. C, Mn, Cr, Ni, Mo, Cu, V, Nb and B can show that it
//   is of another steel; Si, P and S do not harden. What the magnet says, over 10 % Cr, Ni or Mn, from 1.2 %
//   C or from 5 % Mn with over 0.5 % C in a ferritic steel, or a stainless certificate outside its grade,
//   stop the work: no figure before the metal is known (heat/identity.cpp).
// * The approved procedure rules over all of it; where a method, a document, the tempering or the family
//   would be more careful, that is a caution naming both figures, never silence (Overruled).
// * What the filler's own metal asks for (practice of its row) counts beside what the metal under it does,
//   never alone and never on metal that goes by its own practice alone: cast iron, copper, nickel,
//   austenitic. Of a range over 300 °C no more than 300 °C or its lower end counts,
//   and the whole is told: more is for an approved procedure, since steel bears 350 °C where its table does
//   not say that it is never quenched.
// * While preheat is asked for without a figure there is no usual interpass maximum; the head tells an
//   approved one alone.
// * A table of preheat with fillers is for those alone. What an approved procedure heats against its rules
//   (heated_against) is a stop: manganese steel, cast iron laid cold between 200 and 450 °C, and steel that
//   keeps its hardness only under 250 °C, over what softens it. Nothing to heat it with is counted before
//   its author has confirmed it.

/// Looks into the tables that list the grade and asks the family's plugin, see preheat(): everything that has
/// a say on the preheat of one case, each method marked whether it may rule.
void gather_methods(Preheat& found, const HeatCase& heat_case);

// Where no document gives an interpass maximum: no more than this over the minimum, never over this, and well
// under the temperature the metal was tempered at [common practice, no source].
inline constexpr double usual_range_K = 100;
inline const Temperature usual_maximum = in_si<Temperature>(623.15);
inline constexpr double below_tempering_K = 50;

/// Stainless weld metal is welded no hotter than this, 175 to 200 °C [common practice, no source].
inline const Temperature stainless_maximum = in_si<Temperature>(448.15);

/// How hot metal that was quenched or tempered may get before it softens; nothing when that is not known.
std::optional<AskedTemperature> softens_over(const HeatCase& heat_case);

/// The highest temperature to begin a ring at: the lowest that a document asks for the grade, else the usual
/// one. Nothing when neither is known, nor a usual one while preheat is asked for without a figure.
std::optional<AskedTemperature> interpass_maximum(const HeatCase& heat_case, const Preheat& preheat);

} // namespace ringfill
