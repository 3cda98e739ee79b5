#include <ringfill/table/figure.hpp>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/map.hpp>

#include <ringfill/fault/nearest.hpp>

namespace ringfill {
namespace {

std::optional<std::string> key(const Spot& spot) {
    const Bibliography& sources = *spot.entry->reading().sources;
    const std::string* text = spot.value->text();
    if (!text)
        spot.refuse("is not a source key", "write the key of a source in quotes");
    else if (sources.find(*text) != sources.end())
        return *text;
    else
        spot.refuse("is not a known source",
                    suggest(*text, sources | ranges::views::keys | ranges::to<std::vector>()));
    return std::nullopt;
}

} // namespace

std::optional<SourcedRange<double>> sourced_figures(const Spot& spot, const Field& field) {
    const bool is_range = field.kind == Kind::sourced_range;
    const Value::List* list = spot.value->list();
    if (!list || list->size() != (is_range ? 3 : 2)) {
        spot.refuse(is_range ? "is not a range with its source" : "has no source",
                    fmt::format("write {}", kind_in_words(is_range ? Kind::sourced_range : Kind::sourced)));
        return std::nullopt;
    }
    const auto low = spot.with(list->front()).number_in(field);
    const auto high = is_range ? spot.with((*list)[1]).number_in(field) : low;
    auto source = key(spot.with(list->back()));
    if (!low || !high || !source)
        return std::nullopt;
    if (*low > *high) {
        spot.refuse("has its low end over its high end", "swap the two");
        return std::nullopt;
    }
    return SourcedRange<double>{{*low, *high}, std::move(*source)};
}

std::string source_key(const Entry& row, const Field& field) {
    const Value* value = row.find(field);
    return value ? key(row.spot(field, *value)).value_or("") : "";
}

double si_of(double figure, const Field& field) {
    if (field.zero == 0)
        return figure * field.factor;
    const double kelvin = figure * field.factor + field.zero;
    return field.factor == 1 ? kelvin : factor::settled_kelvin(kelvin);
}

} // namespace ringfill
