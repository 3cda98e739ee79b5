#pragma once

#include <ringfill/table/packs.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The shielding gas to take, by the usable content of the cylinders, and for carbon dioxide by the flow one
/// cylinder gives without freezing its regulator: then as many stand ready as the flow needs at once.
/// @param reserve the share taken on top.
Need take_gas(const GasUse& use, double reserve, const Packs& packs, UnitSystem units);

} // namespace ringfill
