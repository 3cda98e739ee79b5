#pragma once

#include <ringfill/weld/schaeffler.hpp>

namespace ringfill {

/// Equivalents of the WRC-1992 diagram: Cr + Mo + 0.7 Nb and Ni + 35 C + 20 N + 0.25 Cu [%]. Its lines of
/// equal ferrite number are drawn, no equation was printed, so no number is read off them here. Made for weld
/// metal with Mn up to 10, Mo up to 3, N up to 0.2 and Si up to 1 %. [Kotecki and Siewert 1992; the copper
/// term read, the coefficients from memory]
Equivalents wrc_1992(const Shares& metal);

/// Whether a metal lies within what the diagram was made for.
bool in_wrc_1992_range(const Shares& metal);

/// How they were reached, under their names in the result.
std::vector<Working> wrc_1992_working(const Shares& metal);

} // namespace ringfill
