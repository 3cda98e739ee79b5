#pragma once

#include <cstdint>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// All bores together, counts applied.
struct Totals {
    Mass laid;
    Mass wire;
    Mass piece_mass; ///< of electrodes and rods
    std::int64_t pieces = 0;
    Time arc;
    Volume gas;
    std::vector<Working> working; ///< how they were reached (totals.*)
};

/// @param gas of all bores.
Totals totals(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores, Volume gas);

} // namespace ringfill
