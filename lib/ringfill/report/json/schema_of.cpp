#include <ringfill/report/json/schema_of.hpp>

#include <string>

#include <fmt/format.h>

namespace ringfill {
namespace {

struct Properties {
    Value::Object all;
    Value::List required;
};

void add(Properties& properties, std::span<const SchemaRow> rows, bool always) {
    for (const SchemaRow& row : rows)
        if (!row.made) {
            add(properties, row.members, always && !row.may_be_absent);
        } else {
            Value::Object schema = row.made();
            const auto describe = [&](const auto& unit) {
                if (ends_in(row.key, unit.name))
                    schema.push_back({"description", fmt::format("in {}", unit.sign)});
            };
            std::apply([&](const auto&... unit) { (describe(unit), ...); }, key_units);
            properties.all.push_back({std::string(row.key), std::move(schema)});
            if (always && !row.may_be_absent)
                properties.required.emplace_back(row.key);
        }
}

} // namespace

Value::Object schema_of_type(const char* type) {
    return {{"type", type}};
}

Value::Object schema_of_words(std::span<const std::string_view> words) {
    return {{"enum", Value::List(words.begin(), words.end())}};
}

Value::Object schema_of_list(Value::Object elements) {
    return {{"type", "array"}, {"items", std::move(elements)}};
}

Value::Object schema_of_names(Value::Object each) {
    return {{"type", "object"}, {"additionalProperties", std::move(each)}};
}

Value::Object schema_of_object(std::span<const SchemaRow> rows) {
    Properties properties;
    add(properties, rows, true);
    return {{"type", "object"},
            {"properties", std::move(properties.all)},
            {"required", std::move(properties.required)},
            {"additionalProperties", false}};
}

} // namespace ringfill
