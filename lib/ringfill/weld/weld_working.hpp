#pragma once

#include <vector>

#include <ringfill/weld/bore_weld.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How the figures of a bore's weld were reached: bead.*, build.extra_stock_mm, layers[i].*, faces[i].*,
/// grooves[i].* and metal.*.
std::vector<Working> weld_working(const GivenBore& given, const BoreWeld& weld);

} // namespace ringfill
