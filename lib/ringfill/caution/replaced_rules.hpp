#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/caution/rules.hpp>
#include <ringfill/table/replaced.hpp>

namespace ringfill {

/// A figure of a table as the user reads it: "350 °C", "8 ml/100 g", "yes"; "none" for none.
std::string shown_figure(const Value& figure, std::string_view unit, UnitSystem units);

/// Of the rows that tables of the user replace: each that is less careful than ours, with both figures. Rows
/// of families that the job does not name are left out.
void replaced_rules(CautionList& cautions, const std::vector<ReplacedRow>& replaced,
                    const std::set<std::string>& families);

} // namespace ringfill
