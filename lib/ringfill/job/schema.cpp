#include <ringfill/job/format.hpp>

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/job/spans.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/measure_pattern.hpp>
#include <ringfill/units/measured_field.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill {
namespace {

using Object = Value::Object;
using List = Value::List;

/// Whether a kind is a text with its unit.
bool is_quantity(Kind kind) {
    return !symbols_of(kind).empty();
}

/// A kind and whether its values may be negative: each that a schema has met is a definition of its own.
using Quantity = std::pair<Kind, bool>;
using Quantities = std::set<Quantity>;

/// "a heat input such as ..." is the definition "heat-input".
std::string name_of(const Quantity& quantity) {
    const auto& [kind, may_be_negative] = quantity;
    const std::string words(kind_in_words(kind));
    const std::size_t begin = words.find(' ') + 1;
    std::string name = words.substr(begin, words.find(" such as ") - begin);
    std::replace(name.begin(), name.end(), ' ', '-');
    return name + (may_be_negative ? "-signed" : "");
}

Object definition_of(const Quantity& quantity) {
    const auto& [kind, may_be_negative] = quantity;
    const bool bare = kind == Kind::length;
    return {{"description",
             fmt::format("{}{}", kind_in_words(kind), bare ? ", or a plain number in the job's units" : "")},
            {"type", bare ? Value(List{"string", "number"}) : Value("string")},
            {"maxLength", 200.0},
            {"pattern", measure_pattern(kind, may_be_negative)}};
}

Value words_of(const Field& field) {
    return List(field.words.begin(), field.words.end());
}

/// The range of a plain number. Of a bare length it is the widest of both unit systems.
void add_range(Object& schema, const Span& span, double low_unit = 1, double high_unit = 1) {
    schema.push_back({span.low_is_open ? "exclusiveMinimum" : "minimum", span.low / low_unit});
    schema.push_back({"maximum", span.high / high_unit});
}

Object quantity(const Field& field, Quantities& met) {
    const Quantity kind{field.kind, field.kind == Kind::temperature || field.span.low < 0};
    met.insert(kind);
    Object schema = {{"$ref", fmt::format("#/$defs/{}", name_of(kind))}};
    if (field.kind == Kind::length)
        add_range(schema, field.span, factor::inch, 1e-3);
    if (field.words.empty())
        return schema;
    return {{"anyOf", List{std::move(schema), Object{{"enum", words_of(field)}}}}};
}

Object record_schema(const Record& record, Quantities& met);

/// One value of a field, without its shape.
Object value_schema(const Field& field, Quantities& met) {
    if (is_quantity(field.kind))
        return quantity(field, met);
    if (field.kind == Kind::object)
        return record_schema(*field.record, met);
    if (field.kind == Kind::flag)
        return {{"type", "boolean"}};
    if (field.kind == Kind::word)
        return {{"enum", words_of(field)}};
    if (field.kind == Kind::text)
        return {{"type", "string"}, {"minLength", field.span.low}, {"maxLength", field.span.high}};
    Object schema = {{"type", field.kind == Kind::count ? "integer" : "number"}};
    add_range(schema, field.span);
    return schema;
}

/// How a text must look, or the names of a field with names of the user's choosing, as a regular expression
/// (ECMA 262).
const std::string* form_of(const Record& record, const Field& field) {
    static const std::tuple<const Record*, std::string_view, std::string> forms[] = {
        {&job_record, "start", "^(?:[01]?[0-9]|2[0-3]):[0-5][0-9]$"},
        {&job_record, "procedures", fmt::format("^[\\s\\S]{{{},{}}}$", spans::name.low, spans::name.high)},
        {&prices_record, "currency", "^[A-Z]{3}$"},
        {&prices_record, "wire_kg", "\\S"},
        {&prices_record, "packs", "\\S"},
        {&prices_record, "extras", "\\S"},
        {&procedure_record, "deposit", fmt::format("^(?:{})$", listed(element_symbols, "|"))},
        {&bore_record, "composition", fmt::format("^(?:{})$", listed(element_symbols, "|"))}};
    for (const auto& [whose, name, pattern] : forms)
        if (whose == &record && name == field.name)
            return &pattern;
    return nullptr;
}

Object shaped(const Record& record, const Field& field, Quantities& met) {
    Object one = value_schema(field, met);
    const std::string* form = form_of(record, field);
    if (field.shape == Shape::list)
        return {{"type", "array"},
                {"items", std::move(one)},
                {"minItems", static_cast<double>(field.least)},
                {"maxItems", static_cast<double>(field.most)}};
    if (field.shape == Shape::named)
        one = {{"type", "object"}, {"additionalProperties", std::move(one)}};
    if (field.least > 0)
        one.push_back({"minProperties", static_cast<double>(field.least)});
    if (form && field.shape == Shape::named)
        one.push_back({"propertyNames", Object{{"pattern", *form}}});
    else if (form)
        one.push_back({"pattern", *form});
    return one;
}

Object field_schema(const Record& record, const Field& field, Quantities& met) {
    const std::string range = is_quantity(field.kind) ? range_in_words(field) : std::string();
    Object schema = {{"description", fmt::format("{}{}{}.", field.help, range.empty() ? "" : "; ", range)}};
    for (Member& member : shaped(record, field, met))
        if (member.name == "description" && field.kind == Kind::object)
            continue; // the field's own says more
        else
            schema.push_back(std::move(member));
    if (!field.fallback.empty())
        schema.push_back({"default", Value(field.fallback)});
    if (!field.sample.empty() && field.sample.find("...") == std::string_view::npos)
        schema.push_back(
            {"examples", List{parse("the description", std::string(field.sample), Origin::table).root}});
    return schema;
}

Object choice_schema(const Choice& choice) {
    List each;
    for (const std::string_view field : choice.fields)
        each.emplace_back(Object{{"required", List{field}}});
    if (choice.how == Choice::at_most_one) // exactly one, or none at all
        each.emplace_back(Object{{"not", Object{{"anyOf", List(each)}}}});
    return {{choice.how == Choice::at_least_one ? "anyOf" : "oneOf", std::move(each)}};
}

Object record_schema(const Record& record, Quantities& met) {
    Object properties;
    List required;
    for (const Field& field : record.fields) {
        properties.push_back({std::string(field.name), field_schema(record, field, met)});
        if (field.required)
            required.emplace_back(field.name);
    }
    Object schema = {{"description", record.help},
                     {"type", "object"},
                     {"properties", std::move(properties)},
                     {"additionalProperties", false}};
    if (!required.empty())
        schema.push_back({"required", std::move(required)});
    List choices;
    for (const Choice& choice : field_choices)
        if (choice.record == &record)
            choices.emplace_back(choice_schema(choice));
    if (!choices.empty())
        schema.push_back({"allOf", std::move(choices)});
    return schema;
}

} // namespace

std::string job_schema() {
    Quantities met;
    Object schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                     {"$id", "urn:ringfill:job:1"},
                     {"title", "ringfill-job/1"}};
    ranges::push_back(schema, record_schema(job_record, met));
    Object definitions;
    for (const Quantity& one : met)
        definitions.push_back({name_of(one), definition_of(one)});
    schema.push_back({"$defs", std::move(definitions)});
    return write_json(schema);
}

} // namespace ringfill
