#include <ringfill/table/sourced.hpp>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/map.hpp>

#include <ringfill/fault/nearest.hpp>

namespace ringfill {

std::optional<std::string> SourcedReader::key(const Value& value, const std::string& path) const {
    if (!value.text()) {
        row_.refuse(value, path, "is not a source key", "write the key of a source in quotes");
        return std::nullopt;
    }
    if (sources_.find(*value.text()) != sources_.end())
        return *value.text();
    row_.refuse(value, path, "is not a known source",
                suggest(*value.text(), sources_ | ranges::views::keys | ranges::to<std::vector>()));
    return std::nullopt;
}

std::optional<Sourced<double>> SourcedReader::one(const Value& value, const Field& field,
                                                  const std::string& path) const {
    const Value::List* pair = value.list();
    if (!pair || pair->size() != 2) {
        row_.refuse(value, path, "has no source", fmt::format("write {}", kind_in_words(Kind::sourced)));
        return std::nullopt;
    }
    const auto number = row_.number_in((*pair)[0], field, path);
    const auto source = key((*pair)[1], path);
    if (!number || !source)
        return std::nullopt;
    return Sourced<double>{*number, *source};
}

std::optional<Sourced<double>> SourcedReader::number(std::string_view field) const {
    const Value* value = row_.find(field);
    return value ? one(*value, row_.field(field), row_.path_of(field)) : std::nullopt;
}

std::string SourcedReader::source_key(std::string_view field) const {
    const Value* value = row_.find(field);
    return value ? key(*value, row_.path_of(field)).value_or("") : "";
}

std::optional<Sourced<std::pair<double, double>>> SourcedReader::range(std::string_view field) const {
    const Value* value = row_.find(field);
    if (!value)
        return std::nullopt;
    const std::string path = row_.path_of(field);
    const Value::List* three = value->list();
    if (!three || three->size() != 3) {
        row_.refuse(*value, path, "is not a range with its source",
                    fmt::format("write {}", kind_in_words(Kind::sourced_range)));
        return std::nullopt;
    }
    const auto low = row_.number_in((*three)[0], row_.field(field), path);
    const auto high = row_.number_in((*three)[1], row_.field(field), path);
    const auto source = key((*three)[2], path);
    if (!low || !high || !source)
        return std::nullopt;
    if (*low > *high) {
        row_.refuse(*value, path, "has its low end over its high end", "swap the two");
        return std::nullopt;
    }
    return Sourced<std::pair<double, double>>{{*low, *high}, *source};
}

std::vector<std::pair<std::string, Sourced<double>>> SourcedReader::named(std::string_view field) const {
    std::vector<std::pair<std::string, Sourced<double>>> found;
    const Value* value = row_.find(field);
    if (!value)
        return found;
    if (!value->object()) {
        row_.refuse(*value, row_.path_of(field),
                    fmt::format("is {}, not an object in braces", kind_in_words(*value)),
                    fmt::format("write it like {}", row_.field(field).sample));
        return found;
    }
    for (const Member& member : *value->object())
        if (auto sourced =
                one(member.value, row_.field(field), member_path(row_.path_of(field), member.name)))
            found.emplace_back(member.name, std::move(*sourced));
    return found;
}

} // namespace ringfill
