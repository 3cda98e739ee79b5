#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

class Entry;
struct Record;

/// One row of a table of least preheat: it holds for metal within all its limits.
struct PreheatRow {
    std::optional<Sourced<Length>> up_to;             ///< wall, the limit included
    std::optional<Sourced<double>> carbon_up_to_pct;  ///< likewise
    std::optional<Sourced<double>> tensile_up_to_MPa; ///< likewise
    Sourced<Temperature> minimum; ///< of a range the upper end, of two prints of one figure the higher
    std::optional<Temperature> range_from; ///< the lower end, where the minimum is the upper one of a range
    std::optional<Sourced<Temperature>> maximum; ///< interpass
};

/// A table of least preheat, by a document or by practice: the first row that fits holds.
struct PreheatGroup {
    std::string name;
    std::optional<Sourced<double>> hydrogen_up_to; ///< ml/100 g the table was made for, the limit included
    std::optional<Sourced<double>> hydrogen_over;  ///< it is for more hydrogen than this
    std::vector<PreheatRow> rows;
    std::vector<std::string> fillers = {}; ///< family/name that it is for; empty: all
};

extern const Record preheat_group_record;
extern const Record preheat_row_record;

/// Reads one table of least preheat; a row without a figure is noted. The last row may have limits too:
/// beyond them the table says nothing.
PreheatGroup read_preheat_group(const std::string& name, const Entry& entry, const Bibliography& sources);

/// Likewise the practice of a grade or a filler, which is for it alone and names no fillers.
PreheatGroup read_practice(const std::string& name, const Entry& entry, const Bibliography& sources);

} // namespace ringfill
