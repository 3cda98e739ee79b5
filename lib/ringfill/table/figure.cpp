#include <ringfill/table/figure.hpp>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/map.hpp>

#include <ringfill/fault/nearest.hpp>

namespace ringfill {
namespace {

std::optional<std::string> key(const Entry& row, const Value& value, const Spot& spot) {
    const Bibliography& sources = *row.reading().sources;
    if (!value.text())
        row.refuse(value, spot.path(), "is not a source key", "write the key of a source in quotes");
    else if (sources.find(*value.text()) != sources.end())
        return *value.text();
    else
        row.refuse(value, spot.path(), "is not a known source",
                   suggest(*value.text(), sources | ranges::views::keys | ranges::to<std::vector>()));
    return std::nullopt;
}

std::optional<SourcedNumber> one(const Entry& row, const Value& value, const Field& field, const Spot& spot) {
    const Value::List* pair = value.list();
    if (!pair || pair->size() != 2) {
        row.refuse(value, spot.path(), "has no source",
                   fmt::format("write {}", kind_in_words(Kind::sourced)));
        return std::nullopt;
    }
    const auto number = row.number_in((*pair)[0], field, spot);
    auto source = key(row, (*pair)[1], spot);
    if (!number || !source)
        return std::nullopt;
    return SourcedNumber{*number, std::move(*source)};
}

} // namespace

std::optional<SourcedNumber> sourced_number(const Entry& row, const Field& field) {
    const Value* value = row.find(field);
    return value ? one(row, *value, field, row.spot(field)) : std::nullopt;
}

std::string source_key(const Entry& row, const Field& field) {
    const Value* value = row.find(field);
    return value ? key(row, *value, row.spot(field)).value_or("") : "";
}

std::optional<SourcedRange> sourced_range(const Entry& row, const Field& field) {
    const Value* value = row.find(field);
    if (!value)
        return std::nullopt;
    const Spot spot = row.spot(field);
    const Value::List* three = value->list();
    if (!three || three->size() != 3) {
        row.refuse(*value, spot.path(), "is not a range with its source",
                   fmt::format("write {}", kind_in_words(Kind::sourced_range)));
        return std::nullopt;
    }
    const auto low = row.number_in((*three)[0], field, spot);
    const auto high = row.number_in((*three)[1], field, spot);
    const auto source = key(row, (*three)[2], spot);
    if (!low || !high || !source)
        return std::nullopt;
    if (*low > *high) {
        row.refuse(*value, spot.path(), "has its low end over its high end", "swap the two");
        return std::nullopt;
    }
    return SourcedRange{{*low, *high}, *source};
}

double si_of(double figure, const Field& field) {
    if (field.zero == 0)
        return figure * field.factor;
    const double kelvin = figure * field.factor + field.zero;
    return field.factor == 1 ? kelvin : factor::settled_kelvin(kelvin);
}

bool FieldOf<std::vector<std::pair<std::string, SourcedNumber>>>::fill(
    const Entry& entry, const Field& field, std::vector<std::pair<std::string, SourcedNumber>>& to) {
    to.clear();
    for (const auto& [spot, value] : entry.elements(field))
        if (auto sourced = one(entry, *value, field, spot))
            to.emplace_back(spot.name, std::move(*sourced));
    return entry.find(field) != nullptr;
}

} // namespace ringfill
