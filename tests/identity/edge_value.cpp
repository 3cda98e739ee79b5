#include "identity/edge_value.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <optional>
#include <span>
#include <utility>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/job/field_rules.hpp>
#include <ringfill/units/measure.hpp>
#include <ringfill/units/unit.hpp>

namespace ringfill::testing {
namespace {

/// At an end of a range or beside it, seldom outside; else somewhere in it, as often small as large.
double edge_of(const Span& span, Draw& draw) {
    constexpr double huge = std::numeric_limits<double>::max();
    const double width = span.high - span.low;
    switch (draw.whole(0, 23)) {
    case 0:
        return span.low;
    case 1:
    case 2:
        return span.high;
    case 3:
        return std::nextafter(span.low, huge);
    case 4:
        return std::nextafter(span.high, -huge);
    case 5:
        return std::nextafter(span.low, -huge);
    case 6:
        return std::nextafter(span.high, huge);
    case 7:
        return draw.chance(50) ? huge : -span.high;
    case 8:
        return span.low + width * 1e-12;
    case 9:
        return span.high - width * 1e-12;
    default:
        return span.low + width * std::exp2(-40 * draw.share());
    }
}

/// What stands there, or the sample, changed a little or a lot.
double near(double value, Draw& draw) {
    constexpr std::array factors = {1.0, 1 + 1e-12, 1 - 1e-12, 1.001, 0.999, 1.1,
                                    0.9, 1.5,       0.5,       2.0,   10.0,  0.1};
    const double changed = value * draw.of(factors);
    return std::isfinite(changed) ? changed : value;
}

bool is_quantity(Kind kind) {
    return kind >= Kind::share && kind <= Kind::time;
}

std::optional<double> si_of(const Value* value, Kind kind) {
    if (value && value->number())
        return kind == Kind::length ? *value->number() / 1'000 : *value->number();
    if (!value || !value->text())
        return {};
    const auto measured = measure(*value->text(), kind);
    const double* si = std::get_if<double>(&measured);
    return si ? std::optional(*si) : std::nullopt;
}

/// A quantity in one of its units, now and then as people write it by hand.
Value quantity(double si, Kind kind, Draw& draw) {
    constexpr std::array by_hand = {"3-9/16 in", "1/64 in",       "0.5 mm",
                                    "3 9/16 in", "1 ft 6-1/2 in", "25.4 mm"};
    if (kind == Kind::length && draw.chance(10))
        return draw.of(by_hand);
    if (kind == Kind::length && draw.chance(10) && std::isfinite(si * 1'000))
        return si * 1'000; // bare, in whatever unit the job has
    const std::string symbol = draw.of(symbols_of(kind));
    const Unit& unit = *find_unit(symbol, kind);
    return fmt::format("{} {}", (si - unit.zero) / unit.factor, symbol);
}

Value edge_measure(const Field& field, const Value* present, Draw& draw) {
    const Value sample = has_sample(field) ? sample_of(field) : Value();
    const Value* shown = sample.list() ? &sample.list()->front() : &sample;
    auto base = si_of(present, field.kind);
    if (!base)
        base = si_of(shown, field.kind);
    const double si = base && draw.chance(60) ? near(*base, draw) : edge_of(field.span, draw);
    if (is_quantity(field.kind))
        return quantity(si, field.kind, draw);
    if (field.kind == Kind::count)
        return draw.chance(95) ? std::round(si) : si;
    const bool is_price = field.span.high >= 1e8 && si < 1e9; // has no more than two decimals
    return is_price && draw.chance(90) ? std::round(si * 100) / 100 : si;
}

/// A text at the ends of its length.
Value edge_text(const Span& span, Draw& draw) {
    const auto length = static_cast<std::size_t>(std::max(0.0, draw.chance(70)   ? span.low + draw.whole(0, 5)
                                                               : draw.chance(90) ? span.high
                                                                                 : span.high + 1));
    std::string text;
    for (std::size_t i = 0; i < length; ++i)
        text += draw.chance(5) ? "ü" : std::string(1, static_cast<char>('a' + draw.whole(0, 3)));
    return text;
}

Value edge_name(const Field& field, const ShopNames& names, Draw& draw) {
    constexpr std::array classes = {"H6", "H7", "H9", "H11", "JS7", "F8", "N9", "P7", "Z7"};
    constexpr std::array starts = {"00:00", "23:59", "7:00", "12:30", "24:00"};
    constexpr std::array lines = {"one", "two", "three"};
    if (field.name == "filler")
        return draw.of(names.fillers);
    if (field.name == "base")
        return draw.chance(90) ? draw.of(names.bases) : "unknown";
    if (field.name == "gas")
        return draw.chance(90) ? draw.of(names.gases) : "none";
    if (field.name == "currency")
        return draw.of(names.currencies);
    if (field.name == "size_class")
        return draw.of(classes);
    if (field.name == "start")
        return draw.of(starts);
    if (field.name == "line")
        return draw.of(lines);
    if (field.name == "fire_rules" || field.name == "procedure")
        return sample_of(field);
    return edge_text(field.span, draw);
}

Value edge_one(const Field& field, const Value* present, const ShopNames& names, Draw& draw) {
    switch (field.kind) {
    case Kind::object:
        return has_sample(field) ? sample_of(field) : Value(Value::Object());
    case Kind::text:
        return edge_name(field, names, draw);
    case Kind::word:
        return draw.of(field.words);
    case Kind::flag:
        return draw.chance(50);
    default:
        return !field.words.empty() && draw.chance(15) ? Value(draw.of(field.words))
                                                       : edge_measure(field, present, draw);
    }
}

std::size_t edge_count(const Field& field, Draw& draw) {
    switch (draw.whole(0, 9)) {
    case 0:
        return field.least;
    case 1:
        return field.least > 0 ? field.least - 1 : 0;
    case 2:
        return field.most <= 400 ? field.most : field.least;
    case 3:
        return field.most <= 400 ? field.most + 1 : field.least;
    default:
        return field.least + static_cast<std::size_t>(draw.whole(0, 3));
    }
}

Value edge_list(const Field& field, const Value* present, const ShopNames& names, Draw& draw) {
    Value::List list;
    const std::size_t count = edge_count(field, draw);
    const Value sample = has_sample(field) ? sample_of(field) : Value();
    const Value* from = present && present->list() && !present->list()->empty() ? present : &sample;
    for (std::size_t i = 0; i < count; ++i) {
        const Value* one =
            from->list() && !from->list()->empty() ? &(*from->list())[i % from->list()->size()] : nullptr;
        const bool keeps = one && draw.chance(count > 5 ? 95 : 50);
        list.push_back(keeps || (one && field.kind == Kind::object) ? *one
                                                                    : edge_one(field, one, names, draw));
    }
    if (is_quantity(field.kind) && draw.chance(50))
        std::sort(list.begin(), list.end(), [&](const Value& a, const Value& b) {
            return si_of(&a, field.kind).value_or(0) < si_of(&b, field.kind).value_or(0);
        });
    return list;
}

Value edge_named(const Field& field, const Value* present, const ShopNames& names, Draw& draw) {
    constexpr std::array packs = {
        "11 kg propane cylinder", "contact tips", "CO2 cylinder", "spool", "blanket", "cylinder"};
    Value::Object object = present && present->object() ? *present->object() : Value::Object();
    if (field.record) { // one more like the first
        if (!object.empty())
            object.push_back({"another " + std::to_string(object.size()), object.front().value});
        return object;
    }
    const std::string name = field.name == "composition" ? std::string(draw.of(std::span(element_symbols)))
                             : field.name == "wire_kg"   ? draw.of(names.fillers)
                             : field.name == "packs"     ? std::string(draw.of(packs))
                                                         : *edge_text(field.span, draw).text();
    if (std::none_of(object.begin(), object.end(), [&](const Member& member) { return member.name == name; }))
        object.push_back({name, edge_one(field, nullptr, names, draw)});
    return object;
}

} // namespace

ShopNames names_in(const Shop& shop) {
    ShopNames names;
    for (const Family& family : shop.registry.families()) {
        for (const Filler& filler : family.fillers)
            names.fillers.push_back(family.name + '/' + filler.name);
        for (const Base& base : family.bases)
            names.bases.push_back(family.name + '/' + base.name);
    }
    for (const Gas& gas : shop.gases)
        names.gases.push_back(gas.name);
    for (const Currency& currency : shop.currencies)
        names.currencies.push_back(currency.name);
    return names;
}

bool has_sample(const Field& field) {
    return !field.sample.empty() && field.sample.find("...") == std::string_view::npos;
}

Value sample_of(const Field& field) {
    return parse("sample.json", std::string(field.sample), Origin::job).root;
}

Value edge_value(const Field& field, const Value* present, const ShopNames& names, Draw& draw) {
    if (field.shape == Shape::list)
        return edge_list(field, present, names, draw);
    if (field.shape == Shape::named)
        return edge_named(field, present, names, draw);
    return edge_one(field, present, names, draw);
}

Value length_text(double mm) {
    return fmt::format("{} mm", mm);
}

} // namespace ringfill::testing
