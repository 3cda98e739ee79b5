#include <ringfill/job/read_prices.hpp>

#include <cmath>

#include <fmt/format.h>

#include <ringfill/job/description.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

constexpr int most_price_decimals = 6;
constexpr int most_distance_decimals = 3;

/// A number as it stands in the text, so that no digit of a price is lost.
std::optional<Decimal> exact(const Entry& entry, const Value& value, const Field& field,
                             const std::string& path, int decimals) {
    if (!entry.number_in(value, field, path))
        return std::nullopt;
    const std::string& text = entry.reading().document.text;
    auto digits = std::string_view(text).substr(value.begin, value.end - value.begin);
    if (digits.starts_with('-')) // in range, so it is -0
        digits.remove_prefix(1);
    const auto number = decimal_of(digits);
    if (number && number->decimals <= decimals)
        return number;
    entry.refuse(value, path, fmt::format("has more than {} decimals", decimals), "round it");
    return std::nullopt;
}

std::optional<Decimal> price(const Entry& entry, std::string_view name, int decimals = most_price_decimals) {
    const Value* value = entry.find(name);
    return value ? exact(entry, *value, entry.field(name), entry.path_of(name), decimals) : std::nullopt;
}

NamedPrices named_prices(const Entry& entry, std::string_view name) {
    NamedPrices found;
    const Value* value = entry.find(name);
    if (!value)
        return found;
    if (!value->object()) {
        entry.refuse(*value, entry.path_of(name),
                     fmt::format("is {}, not an object in braces", kind_in_words(*value)),
                     fmt::format("write it like {}", entry.field(name).sample));
        return found;
    }
    for (const Member& member : *value->object()) {
        const std::string path = member_path(entry.path_of(name), member.name);
        if (member.name.find_first_not_of(" \t\r\n") == std::string::npos) {
            entry.refuse(member.value, path, "is a price without a name", "name what it is for");
            continue;
        }
        if (const auto one = exact(entry, member.value, entry.field(name), path, most_price_decimals))
            found.emplace_back(member.name, *one);
    }
    return found;
}

/// A percentage in its thousandths; they are whole but for what floating point leaves.
std::optional<ExactShare> share(const Entry& entry, std::string_view name) {
    const auto ratio = measured_si(entry, name);
    if (!ratio)
        return std::nullopt;
    const double parts = *ratio * static_cast<double>(whole_share);
    if (std::fabs(parts - std::round(parts)) < 1e-6)
        return std::llround(parts);
    entry.refuse(name, "has more than 3 decimals", "round it");
    return std::nullopt;
}

Travel read_travel(const Entry& entry) {
    Travel travel;
    travel.distance = price(entry, "distance", most_distance_decimals);
    travel.in_miles = entry.word("in") == "miles";
    travel.time = measured<Time>(entry, "time");
    travel.trips = entry.count("trips");
    return travel;
}

} // namespace

Prices read_prices(const Entry& entry) {
    Prices prices;
    prices.currency = entry.text("currency");
    prices.labour_hour = price(entry, "labour_hour");
    if (const auto labour = entry.object("labour"))
        for (const Field& field : labour_record.fields)
            if (const auto one = price(*labour, field.name))
                prices.labour.emplace_back(field.name, *one);
    prices.watch_hour = price(entry, "watch_hour");
    prices.wire_kg = named_prices(entry, "wire_kg");
    prices.packs = named_prices(entry, "packs");
    prices.by_use = entry.word("materials") == "use";
    prices.power_kwh = price(entry, "power_kwh");
    prices.fuel_litre = price(entry, "fuel_litre");
    if (const auto travel = entry.object("travel"))
        prices.travel = read_travel(*travel);
    prices.drive = price(entry, "drive");
    prices.extras = named_prices(entry, "extras");
    prices.contingency = share(entry, "contingency");
    prices.markup = share(entry, "markup");
    prices.tax = share(entry, "tax");
    return prices;
}

} // namespace ringfill
