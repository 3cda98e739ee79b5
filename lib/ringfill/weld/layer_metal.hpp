#pragma once

#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/weld/wrc_1992.hpp>

namespace ringfill {

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
