#include <ringfill/job/field_rules.hpp>

namespace ringfill {

const std::vector<Choice> field_choices = {
    {&worn_record, Choice::exactly_one, {"diameter", "stations"}},
    {&station_record, Choice::exactly_one, {"radii", "diameters"}},
    {&procedure_record, Choice::at_least_one, {"wire_feed", "current", "deposition_rate"}},
    {&bore_record, Choice::at_most_one, {"size_class", "size_limits"}},
};

} // namespace ringfill
