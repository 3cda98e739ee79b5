#pragma once

#include <optional>
#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/weld/ferrite.hpp>

namespace ringfill {

/// The least ferrite that keeps austenitic weld metal from cracking while it freezes, 3 to 4 ferrite numbers;
/// the lower end is taken for percent [Valiente Bermejo 2012, read in the abstract].
inline constexpr double least_ferrite = 3;

/// One caution where the first layer of austenitic metal is estimated to hold less.
std::vector<Caution> ferrite_cautions(const WornBore& bore, const Dilution& dilution,
                                      const LayerMetals& metals);

} // namespace ringfill
