#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/weld/dilution.hpp>

namespace ringfill {

/// Whether a magnet holds on a metal: on ferritic and martensitic steel.
bool holds_magnet(const Base& base);

/// Why the metal cannot be what the job calls it, so that no heat may be given before it is known: what the
/// magnet says, a certificate of no ferritic steel at all (over 10 % Cr, Ni or Mn, 1.2 % C and more, 5 % Mn
/// and more unless its C is 0.5 % at most [common practice, no source]), one outside the limits of a
/// stainless grade. Nothing when nothing speaks against it.
std::optional<std::string> identity_doubt(const WornBore& bore, const Base& base);

/// Why a mill certificate is not of a ferritic grade, though of a ferritic steel: the first hardening element
/// (C, Mn, Cr, Ni, Mo, Cu, V, Nb, B; Si, P and S do not harden) over the grade's limit by more than 0.02 % of
/// carbon or a tenth of another, of unknown metal over that of the grade it counts as; or carbon that is far
/// under the grade's, by more than 0.10 %. Nothing for unknown metal whose certificate gives all that the
/// rules weigh [the limits: common practice, no source].
std::optional<std::string> not_of_grade(const WornBore& bore, const Base& base);

/// What of the certificate makes cracks in the hot weld: P or S over the grade's limit, in words; else
/// nothing.
std::optional<std::string> dirty_steel(const WornBore& bore, const Base& base);

/// A fault for each element of a certificate that no machine steel holds so little of, C under 0.02 % or Mn
/// under 0.1 % [common practice, no source]: fractions typed for percent would ask for too little preheat.
std::vector<Fault> certificate_faults(const WornBore& bore, const Base& base);

/// Why metal of this structure is not heated for what is laid on it, as the end of a sentence: its own
/// practice alone says how hot it is welded. Empty for ferritic and martensitic steel, which bear the heat.
std::string_view why_not_for_filler(std::string_view structure);

/// Whether metal must not be kept hot once it is welded: austenitic, nickel and copper metal, and steel that
/// softens under 250 °C, or was tempered under 250 °C, as the rules of steel have it [common practice, no
/// source].
bool cools_in_the_open(const Base& base);

} // namespace ringfill
