#pragma once

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/job/description.hpp>

namespace ringfill {

/// Symbols of the elements that certificates of steel and its fillers print, as they are written: "C", "Mn".
inline constexpr std::string_view element_symbols[] = {
    "C",  "Si", "Mn", "P",  "S",  "Cr", "Ni", "Mo", "V",  "Cu", "Al", "Nb", "Ti",
    "B",  "N",  "W",  "Co", "Sn", "As", "Sb", "Pb", "Bi", "Zr", "Ta", "Ca", "Mg",
    "Ce", "Zn", "Se", "Te", "Fe", "H",  "O",  "La", "Y",  "Ag", "Be", "Cd", "Hf"};

/// Refuses percent by mass of what is no element, and more than 100 % in all.
void check_shares(const std::vector<std::pair<std::string, double>>& shares, const Entry& entry,
                  std::string_view field);

/// What the reader asks of several fields of one object together, told for the schema and the manual. The
/// reader has a message of its own for each.
struct Choice {
    enum How { exactly_one, at_least_one, at_most_one };
    const Record* record;
    How how;
    std::vector<std::string_view> fields;
};
extern const std::vector<Choice> field_choices;

} // namespace ringfill
