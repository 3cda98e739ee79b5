#pragma once

#include <optional>

#include <ringfill/material/preheat_table.hpp>

namespace ringfill {

/// What a table of preheat needs to know; what is absent is not known.
struct PreheatCase {
    std::optional<Length> wall;
    std::optional<double> carbon_pct;
    std::optional<double> tensile_MPa;
    std::optional<double> hydrogen_ml_100g;
};

/// What a table of preheat says.
struct RowAnswer {
    Sourced<Temperature> minimum;
    std::optional<Sourced<Temperature>> maximum; ///< interpass
    bool for_the_worst = false; ///< something was not known, so the worst row that may fit is taken
};

/// Whether a table is for this much hydrogen. Where that is not known it counts as more than any limit.
bool holds_for_hydrogen(const PreheatGroup& group, std::optional<double> hydrogen_ml_100g);

/// The first row that fits, limits included; of rows that may fit, because what they ask for is not known,
/// the highest minimum and the lowest maximum. Nothing when no row fits.
std::optional<RowAnswer> look_up(const PreheatGroup& group, const PreheatCase& what);

} // namespace ringfill
