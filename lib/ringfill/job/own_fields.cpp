#include <ringfill/job/own_fields.hpp>

#include <cmath>
#include <limits>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {

/// The number as it is written in the text; of a job made by hand as it would be written.
std::optional<Decimal> FieldOf<Decimal>::read(const Spot& spot, const Field& field) {
    if (field.shape == Shape::named && spot.name.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        spot.refuse("is a price without a name", "name what it is for");
        return std::nullopt;
    }
    if (!spot.number_in(field))
        return std::nullopt;
    const Reading& reading = spot.entry->reading();
    const Value& value = *spot.value;
    std::string digits = reading.by_hand ? write_number(*value.number())
                                         : reading.document.text.substr(value.begin, value.end - value.begin);
    if (digits.starts_with('-')) // in range, so it is -0
        digits.erase(0, 1);
    const auto number = decimal_of(digits);
    if (number && number->decimals <= field.decimals)
        return number;
    spot.refuse(fmt::format("has more than {} decimals", field.decimals), "round it");
    return std::nullopt;
}

Value FieldOf<Decimal>::give(const Field&, const Decimal& decimal) {
    const bool in_lowest_form = decimal.decimals == 0 || decimal.digits % 10 != 0;
    const bool sound = in_lowest_form && decimal.decimals >= 0 && decimal.decimals <= ringfill::most_decimals;
    return sound ? as_double(decimal) : std::numeric_limits<double>::quiet_NaN();
}

bool FieldOf<ExactShare>::fill(const Entry& entry, const Field& field, ExactShare& to) {
    Ratio written;
    if (!FieldOf<Ratio>::fill(entry, field, written))
        return false;
    // The thousandths are whole but for what floating point leaves.
    const double parts = written.value() * static_cast<double>(whole_share);
    if (!(std::fabs(parts - std::round(parts)) < 1e-6)) {
        entry.refuse(field.name, "has more than 3 decimals", "round it");
        return false;
    }
    to = std::llround(parts);
    return true;
}

Value FieldOf<ExactShare>::give(const Field&, ExactShare exact) {
    return static_cast<double>(exact) / static_cast<double>(whole_share);
}

std::optional<Time> clock_time(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon > 2 || text.size() != colon + 3)
        return std::nullopt;
    const auto hour = whole_number(text.substr(0, colon));
    const auto minute = whole_number(text.substr(colon + 1));
    if (!hour || !minute || *hour > 23 || *minute > 59)
        return std::nullopt;
    return in_si<Time>(static_cast<double>(*hour) * factor::hour +
                       static_cast<double>(*minute) * factor::minute);
}

} // namespace ringfill
