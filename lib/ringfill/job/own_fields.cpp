#include <ringfill/job/own_fields.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include <ringfill/document/write.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// The digits of a number as they stand in the text; those of a job made by hand as they would be written.
std::string digits_of(const Reading& reading, const Value& value) {
    if (reading.by_hand)
        return write_number(*value.number());
    return reading.document.text.substr(value.begin, value.end - value.begin);
}

std::optional<Decimal> exact(const Entry& entry, const Value& value, const Field& field, const Spot& spot) {
    if (!entry.number_in(value, field, spot))
        return std::nullopt;
    std::string digits = digits_of(entry.reading(), value);
    if (digits.starts_with('-')) // in range, so it is -0
        digits.erase(0, 1);
    const auto number = decimal_of(digits);
    if (number && number->decimals <= field.decimals)
        return number;
    entry.refuse(value, spot.path(), fmt::format("has more than {} decimals", field.decimals), "round it");
    return std::nullopt;
}

/// The prices of a record's fields, in their order.
void fill_described(const Entry& entry, NamedPrices& to) {
    for (const Field& field : entry.record().fields)
        if (const Value* value = entry.find(field))
            if (const auto price = exact(entry, *value, field, entry.spot(field)))
                to.emplace_back(field.name, *price);
}

/// One or two digits as a number, nothing for anything else.
std::optional<int> small_number(std::string_view digits) {
    const bool all_digits =
        std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (digits.empty() || digits.size() > 2 || !all_digits)
        return std::nullopt;
    return digits.size() == 1 ? digits[0] - '0' : 10 * (digits[0] - '0') + digits[1] - '0';
}

} // namespace

bool FieldOf<Decimal>::fill(const Entry& entry, const Field& field, Decimal& to) {
    const Value* value = entry.find(field);
    const auto number = value ? exact(entry, *value, field, entry.spot(field)) : std::nullopt;
    to = number.value_or(to);
    return number.has_value();
}

Value FieldOf<Decimal>::give(const Field&, const Decimal& price) {
    const bool sound = price.decimals >= 0 && price.decimals <= ringfill::most_decimals;
    return sound ? as_double(price) : std::numeric_limits<double>::quiet_NaN();
}

bool FieldOf<NamedPrices>::fill(const Entry& entry, const Field& field, NamedPrices& to) {
    const Value* value = entry.find(field);
    if (field.record) {
        if (const auto object = entry.object(field))
            fill_described(*object, to);
    } else if (value && !value->object()) {
        entry.refuse(*value, entry.path_of(field.name),
                     fmt::format("is {}, not an object in braces", kind_in_words(*value)),
                     fmt::format("write it like {}", field.sample));
    } else if (value) {
        for (const Member& member : *value->object()) {
            const Spot spot{.entry = &entry, .field = field.name, .name = member.name};
            if (member.name.find_first_not_of(" \t\r\n") == std::string::npos)
                entry.refuse(member.value, spot.path(), "is a price without a name", "name what it is for");
            else if (const auto price = exact(entry, member.value, field, spot))
                to.emplace_back(member.name, *price);
        }
    }
    return value != nullptr;
}

Value FieldOf<NamedPrices>::give(const Field& field, const NamedPrices& prices) {
    Value::Object object;
    for (const auto& [name, price] : prices)
        object.push_back({name, FieldOf<Decimal>::give(field, price)});
    return object.empty() ? Value() : Value(std::move(object));
}

bool FieldOf<ExactShare>::fill(const Entry& entry, const Field& field, ExactShare& to) {
    const auto ratio = measured_si(entry, field);
    if (!ratio)
        return false;
    // The thousandths are whole but for what floating point leaves.
    const double parts = *ratio * static_cast<double>(whole_share);
    if (!(std::fabs(parts - std::round(parts)) < 1e-6)) {
        entry.refuse(field.name, "has more than 3 decimals", "round it");
        return false;
    }
    to = std::llround(parts);
    return true;
}

Value FieldOf<ExactShare>::give(const Field&, ExactShare share) {
    return static_cast<double>(share) / static_cast<double>(whole_share);
}

std::optional<Time> clock_time(std::string_view text) {
    const std::size_t colon = std::min(text.find(':'), text.size());
    const auto hour = small_number(text.substr(0, colon));
    const std::string_view rest = text.substr(std::min(colon + 1, text.size()));
    const auto minute = rest.size() == 2 ? small_number(rest) : std::nullopt;
    if (!hour || !minute || *hour > 23 || *minute > 59)
        return std::nullopt;
    return in_si<Time>(*hour * factor::hour + *minute * factor::minute);
}

} // namespace ringfill
