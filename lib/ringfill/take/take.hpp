#pragma once

#include <vector>

#include <ringfill/table/packs.hpp>
#include <ringfill/table/wear_parts.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Everything to load, line by line: wire, electrodes and rods, gas, tips, nozzles, liners.
/// @param reserve the share of wire and gas taken on top.
std::vector<Need> take(const std::vector<WireUse>& wires, const std::vector<PieceUse>& pieces,
                       const std::vector<GasUse>& gases, double reserve, const Packs& packs,
                       const WearParts& wear, UnitSystem units);

} // namespace ringfill
