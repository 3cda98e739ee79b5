#pragma once

#include <ringfill/table/packs.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The electrodes or rods to take: what each bore needs, rounded up to whole ones; on top the reserve and a
/// trial ring a procedure, rounded up likewise; in packets of whole ones by their mass.
/// @param reserve the share taken on top.
Need take_pieces(const PieceUse& use, double reserve, const Packs& packs, UnitSystem units);

} // namespace ringfill
