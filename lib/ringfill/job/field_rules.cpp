#include <ringfill/job/field_rules.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {

const std::vector<Choice> field_choices = {
    {&worn_record, Choice::exactly_one, {"diameter", "stations"}},
    {&station_record, Choice::exactly_one, {"radii", "diameters"}},
    {&procedure_record, Choice::at_least_one, {"wire_feed", "current", "deposition_rate"}},
    {&bore_record, Choice::at_most_one, {"size_class", "size_limits"}},
};

void check_shares(const std::vector<std::pair<std::string, double>>& shares, const Entry& entry,
                  std::string_view field) {
    double sum = 0;
    for (const auto& [element, percent_by_mass] : shares) {
        sum += percent_by_mass;
        if (!ranges::contains(element_symbols, element))
            entry.refuse(field, fmt::format("names {}, which is no symbol of an element", in_quotes(element)),
                         suggest(element, {std::begin(element_symbols), std::end(element_symbols)}));
    }
    if (sum > 100)
        entry.refuse(field, "adds up to more than 100 %",
                     "write percent by mass as the certificate prints it");
}

} // namespace ringfill
