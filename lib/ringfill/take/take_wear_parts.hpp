#pragma once

#include <vector>

#include <ringfill/table/wear_parts.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Contact tips, nozzles and, past its life, a liner for one wire: ⌈arc time/life⌉ and one spare of each; one
/// liner when more wire runs than one lasts for.
std::vector<Need> take_wear_parts(const WireUse& use, const WearParts& wear, UnitSystem units);

} // namespace ringfill
