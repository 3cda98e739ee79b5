#pragma once

#include <vector>

#include "composition.hpp"
#include "question.hpp"
#include "say.hpp"

namespace ringfill::steel {

/// CE(IIW) = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15 [%]. Source: International Institute of Welding, 1967,
/// after Dearden and O'Neill, Trans. Inst. Weld. 1940 (read in restatement). When none of Cr, Mo, V, Ni and
/// Cu is stated, 0.03 is added to C + Mn/6 for the rest (EN 1011-2:2001 C.2.1, memory).
double ce_iiw(const Composition& metal);

/// Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B [%], of low-carbon steels. Source: Ito
/// and Bessyo, IIW document IX-576-68, 1968 (restated in part, the coefficients from memory).
double pcm(const Composition& metal);

/// CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40 [%]. Source: SEW 088, and EN 1011-2:2001 C.3 (memory).
double cet(const Composition& metal);

/// A(C) = 0.75 + 0.25 tanh(20 (C - 0.12)): how far the other elements count, 0.5 at little carbon and 1 from
/// 0.25 % on. Source: as for CEN.
double cen_accommodation(double carbon_pct);

/// CEN = C + A(C) (Si/24 + Mn/6 + Cu/15 + Ni/20 + (Cr + Mo + Nb + V)/5 + 5 B) [%]. Source: Yurioka, Suzuki,
/// Ohshita and Saito, Welding Journal 62, 1983 (memory).
double cen(const Composition& metal);

/// The elements of CET and of Pcm beside C and Mn, for notes on what is not stated.
inline constexpr std::string_view cet_alloys[] = {"Mo", "Cr", "Cu", "Ni"};
inline constexpr std::string_view pcm_alloys[] = {"Si", "Cu", "Cr", "Ni", "Mo", "V", "B"};

/// Whether a metal states none of the elements of CE(IIW) but C and Mn, so that 0.03 stands for them.
bool residuals_unknown(const Composition& metal);

/// CE(IIW), CET and Pcm that count for a question [%]: what its limits reach, else that of the composition.
double ce_of(const Asked& asked);
double cet_of(const Asked& asked);
double pcm_of(const Asked& asked);

/// The four, with how they were reached, as values of an answer; the metal must be usable.
std::vector<Figure> carbon_equivalents(const Asked& asked);

} // namespace ringfill::steel
