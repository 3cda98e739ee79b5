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

} // namespace

std::optional<SourcedRange<double>> sourced_figures(const Entry& row, const Value& value, const Field& field,
                                                    const Spot& spot) {
    const bool is_range = field.kind == Kind::sourced_range;
    const Value::List* list = value.list();
    if (!list || list->size() != (is_range ? 3 : 2)) {
        row.refuse(value, spot.path(), is_range ? "is not a range with its source" : "has no source",
                   fmt::format("write {}", kind_in_words(is_range ? Kind::sourced_range : Kind::sourced)));
        return std::nullopt;
    }
    const auto low = row.number_in(list->front(), field, spot);
    const auto high = is_range ? row.number_in((*list)[1], field, spot) : low;
    auto source = key(row, list->back(), spot);
    if (!low || !high || !source)
        return std::nullopt;
    if (*low > *high) {
        row.refuse(value, spot.path(), "has its low end over its high end", "swap the two");
        return std::nullopt;
    }
    return SourcedRange<double>{{*low, *high}, std::move(*source)};
}

std::string source_key(const Entry& row, const Field& field) {
    const Value* value = row.find(field);
    return value ? key(row, *value, row.spot(field)).value_or("") : "";
}

double si_of(double figure, const Field& field) {
    if (field.zero == 0)
        return figure * field.factor;
    const double kelvin = figure * field.factor + field.zero;
    return field.factor == 1 ? kelvin : factor::settled_kelvin(kelvin);
}

} // namespace ringfill
