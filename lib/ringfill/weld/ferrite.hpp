#pragma once

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/family.hpp>
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

/// Equivalents of the WRC-1992 diagram: Cr + Mo + 0.7 Nb and Ni + 35 C + 20 N + 0.25 Cu [%]. Its lines of
/// equal ferrite number are drawn, no equation was printed, so no number is read off them here. Made for weld
/// metal with Mn up to 10, Mo up to 3, N up to 0.2 and Si up to 1 %. [Kotecki and Siewert 1992; the copper
/// term read, the coefficients from memory]
Equivalents wrc_1992(const Shares& metal);

/// Whether a metal lies within what the diagram was made for.
bool in_wrc_1992_range(const Shares& metal);

/// How many layers the ferrite is told of: further ones differ little.
inline constexpr std::size_t ferrite_layers = 3;

/// What the first layers of austenitic stainless metal are made of.
struct LayerMetals {
    std::vector<Shares> layers; ///< the first of the bore, at most ferrite_layers
    bool wrc = false;           ///< the filler's nitrogen is known and all lie within the diagram's range
    std::string base_from;      ///< where the base metal's composition comes from, for people
};

/// What of the base metal counts in a layer: the mill certificate, element by element over what is usual of
/// the grade, else over the limits of its standard; where that prints a least share alone, the least.
Shares base_shares(const WornBore& bore, const Base& base);

/// Why the ferrite of layers of stainless chromium-nickel metal is not estimated, the end of a sentence.
/// Empty when it is, and of other metal.
std::string no_ferrite(const WornBore& bore, const Base& base, const Filler& filler);

/// Nothing unless the filler's usual metal is austenitic chromium-nickel steel, Cr 16 and Ni 5 % or more, Mn
/// 4 % at most, and the base metal is known and no copper alloy: only for that was the estimate of ferrite
/// made.
std::optional<LayerMetals> layer_metals(const WornBore& bore, const Base& base, const Filler& filler,
                                        const Dilution& dilution);

/// How each figure of the dilution was reached (dilution.*).
std::vector<Working> dilution_working(const Dilution& dilution, const std::optional<LayerMetals>& metals);

} // namespace ringfill
