#include <ringfill/job/field_rules.hpp>

namespace ringfill {

const std::vector<Choice>& field_choices() {
    using enum Choice::How;
    static const std::vector<Choice> choices = {
        {&worn_record, exactly_one, {"diameter", "stations"}},
        {&station_record, exactly_one, {"radii", "diameters"}},
        {&procedure_record, at_least_one, {"wire_feed", "current", "deposition_rate"}},
        {&bore_record, at_most_one, {"size_class", "size_limits"}},
    };
    return choices;
}

} // namespace ringfill
