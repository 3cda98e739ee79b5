#pragma once

#include <string>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/table/suits.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/dilution.hpp>
#include <ringfill/weld/ferrite.hpp>

namespace ringfill {

/// A filler and a base metal of different families need more than this plan knows.
std::vector<Caution> family_cautions(const WornBore& bore, const Procedure& procedure);

/// A filler that is not advised on the metal of a bore, that wants a buffer, or of which no table says
/// anything; none where it is recommended. One that is itself a filler of the buffer is told how its first
/// layer becomes one.
/// @param rule null: no table has one. @param buffer the fillers of the buffer, family/name.
std::vector<Caution> suit_cautions(const WornBore& bore, const Procedure& procedure, const Suit* rule,
                                   const std::vector<std::string>& buffer);

/// A filler of another family than the bore that does not come to its own metal before the finished surface.
std::vector<Caution> dilution_cautions(const WornBore& bore, const Procedure& procedure,
                                       const Dilution& dilution);

/// The least ferrite that keeps austenitic weld metal from cracking while it freezes, 3 to 4 ferrite numbers;
/// the lower end is taken for percent [Valiente Bermejo 2012, read in the abstract].
inline constexpr double least_ferrite = 3;

/// A first layer of austenitic metal that is estimated to hold less.
std::vector<Caution> ferrite_cautions(const WornBore& bore, const Dilution& dilution,
                                      const LayerMetals& metals);

/// Covered electrodes with a limit of hydrogen keep to it only when dry.
std::vector<Caution> form_cautions(const Procedure& procedure, const Filler& filler);

/// What the approved procedure of a procedure asks for, told in every view; none where there is none. A
/// minimum over its maximum is called contradictory, and neither is changed.
std::vector<Caution> approved_cautions(const Procedure& procedure, UnitSystem units);

} // namespace ringfill
