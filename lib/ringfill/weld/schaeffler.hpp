#pragma once

#include <ringfill/weld/dilution.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// Chromium and nickel equivalents of weld metal, percent by mass.
struct Equivalents {
    double chromium;
    double nickel;
};

/// Equivalents of Schaeffler's diagram: Cr + Mo + 1.5 Si + 0.5 Nb and Ni + 30 C + 0.5 Mn [%].
/// [Schaeffler 1949; the coefficients restated in a technical note]
Equivalents schaeffler(const Shares& metal);

/// Séférian's estimate of ferrite in austenitic weld metal from them, 3 (Cr_eq - 0.93 Ni_eq - 6.7), at least
/// 0
/// [%]; good to some 4 points. [Séférian 1959, from memory]
double ferrite(const Equivalents& equivalents);

/// How far the estimate may be out, points of ferrite.
inline constexpr double ferrite_scatter = 4;

/// How they were reached, under their names in the result.
std::vector<Working> schaeffler_working(const Shares& metal);

} // namespace ringfill
