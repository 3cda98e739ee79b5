#pragma once

#include <ringfill/table/packs.hpp>
#include <ringfill/table/wear_parts.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The wire to take: what the bores need; on top the reserve, one liner full and a trial ring a procedure.
/// @param reserve the share taken on top.
Need take_wire(const WireUse& use, double reserve, const Packs& packs, const WearParts& wear,
               UnitSystem units);

} // namespace ringfill
