#pragma once

#include <cstdint>
#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/take/uses.hpp>

namespace ringfill {

/// All bores together, counts applied.
struct Totals {
    Mass laid;
    Mass wire;
    Mass piece_mass; ///< of electrodes and rods
    std::int64_t pieces = 0;
    Time arc;
    Volume gas;
};

Totals totals(const std::vector<BorePlan>& bores, const std::vector<GasUse>& gases);

/// How the totals were reached (totals.*).
std::vector<Working> totals_working(const Totals& totals, const std::vector<GivenBore>& given,
                                    const std::vector<BorePlan>& bores);

} // namespace ringfill
