#pragma once

#include <algorithm>
#include <optional>

#include <ringfill/heat/heat_case.hpp>

namespace ringfill {

/// The row of a table of preheat that holds.
struct RowAnswer : PreheatRow {
    bool for_the_worst = false; ///< something was not known, so the worst row that may fit is taken
};

/// Of a range that a filler's own metal is laid in the upper end counts up to here, and never less than the
/// lower end; hotter is for an approved procedure [common practice, no source]: 500 or 600 °C softens the
/// steel under it and is no mistake to make on the safe side.
inline const Temperature most_of_a_filler = in_si<Temperature>(573.15);

/// Whether the range of a row goes over what counts of it for a filler.
template <class Row>
bool hotter_than_counts(const Row& row) {
    return row.range_from && row.minimum.value > most_of_a_filler && row.minimum.value > *row.range_from;
}

/// What counts of such a row.
template <class Row>
Temperature counted_of_filler(const Row& row) {
    return std::max(*row.range_from, most_of_a_filler);
}

/// Whether a table is for this much hydrogen. Where that is not known it counts as more than any limit.
bool holds_for_hydrogen(const PreheatGroup& group, const HeatCase& heat_case);

/// The first row that fits, limits included; of rows that may fit, because what they ask for is not known,
/// the highest minimum and the lowest maximum. Nothing when no row fits.
std::optional<RowAnswer> look_up(const PreheatGroup& group, const HeatCase& heat_case);

} // namespace ringfill
