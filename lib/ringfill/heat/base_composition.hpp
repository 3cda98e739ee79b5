#pragma once

#include <optional>
#include <string>

#include <ringfill/heat/reachable_index.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/family.hpp>

namespace ringfill {

/// What bounds the carbon equivalent of the part.
struct CarbonCap {
    double pct = 0;
    std::string source;
    bool assumes_year = false; ///< nobody says when the metal was bought
};

/// What the base metal of a bore may hold.
struct BaseComposition {
    CompositionLimits limits;
    std::optional<CarbonCap> cap;
    bool is_full = false; ///< the certificate gives C, Mn, Cr, Mo, Ni, Cu and V
};

/// Whether a certificate gives every element that the rules weigh.
bool is_full_certificate(const WornBore& bore);

/// The ladle analysis of the standard by the product's thickness, the certificate element by element in its
/// place, usual residuals where the standard leaves an element out [Cr 0.15, Ni 0.15, Cu 0.25, Mo 0.04, V
/// 0.02, Si 0.60 %; memory], and the cap on the carbon equivalent where it is known to bind: printed on the
/// certificate, or of the grade's own standard, with 0.02 % for its allowances, unless the metal may be older
/// than it. Nothing but table and certificate for a metal that is no ferritic steel.
/// @param wall after the skim; nothing: not known, and the thickest product counts.
BaseComposition base_composition(const WornBore& bore, const Base& base, std::optional<Length> wall);

} // namespace ringfill
