#include <ringfill/material/preheat_table.hpp>

#include <algorithm>
#include <array>

#include <ringfill/table/figure.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr Span wall{0, 10'000, true};
constexpr Span percent{0, 100};
constexpr Span strength{0, 5'000, true};
constexpr Span celsius_span{-60, 700};
constexpr Span fahrenheit_span{-76, 1'292};
constexpr Span hydrogen{0, 100, true};

constexpr std::array row_fields = {
    Field{.name = "up_to_mm", .kind = Kind::sourced, .span = wall, .sample = R"([25, "B31.3-2014"])"},
    Field{.name = "carbon_up_to_pct",
          .kind = Kind::sourced,
          .span = percent,
          .sample = R"([0.30, "B31.3-2014"])"},
    Field{.name = "tensile_up_to_MPa",
          .kind = Kind::sourced,
          .span = strength,
          .sample = R"([450, "B31.3-2014"])"},
    Field{.name = "minimum_degC",
          .kind = Kind::sourced,
          .span = celsius_span,
          .sample = R"([95, "B31.3-2014"])"},
    Field{
        .name = "minimum_degF", .kind = Kind::sourced, .span = fahrenheit_span, .sample = R"([150, "D1.1"])"},
    Field{.name = "practice_degC",
          .kind = Kind::sourced_range,
          .span = celsius_span,
          .sample = R"([150, 200, "practice"])"},
    Field{.name = "maximum_degC",
          .kind = Kind::sourced,
          .span = celsius_span,
          .sample = R"([315, "B31.3-2014"])"},
    Field{.name = "maximum_degF",
          .kind = Kind::sourced,
          .span = fahrenheit_span,
          .sample = R"([500, "NAVSEA"])"},
};

constexpr std::array group_fields = {
    Field{.name = "hydrogen_up_to_ml_100g",
          .kind = Kind::sourced,
          .span = hydrogen,
          .sample = R"([8, "practice"])"},
    Field{.name = "hydrogen_over_ml_100g",
          .kind = Kind::sourced,
          .span = hydrogen,
          .sample = R"([16, "practice"])"},
    Field{.name = "fillers",
          .kind = Kind::text,
          .shape = Shape::list,
          .sample = R"(["ER410NiMo"])",
          .least = 1,
          .most = 50},
    Field{.name = "rows",
          .kind = Kind::object,
          .shape = Shape::list,
          .required = true,
          .sample = R"([{ "practice_degC": [150, 200, "practice"] }])",
          .record = &preheat_row_record,
          .least = 1,
          .most = 50},
};

/// A temperature printed in one scale or in both; of two prints the one that is safer.
std::optional<Sourced<Temperature>> printed(const SourcedReader& reader, std::string_view celsius_field,
                                            std::string_view fahrenheit_field, bool higher) {
    const auto c = reader.number(celsius_field);
    const auto f = reader.number(fahrenheit_field);
    std::optional<Sourced<Temperature>> found;
    if (c)
        found = Sourced<Temperature>{celsius(c->value), c->source};
    if (f) {
        const Temperature other = fahrenheit(f->value);
        if (!found || (higher ? other > found->value : other < found->value))
            found = Sourced<Temperature>{other, f->source};
    }
    return found;
}

PreheatRow read_row(const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    PreheatRow row;
    row.up_to = reader.quantity<Length>("up_to_mm", 1e-3);
    row.carbon_up_to_pct = reader.number("carbon_up_to_pct");
    row.tensile_up_to_MPa = reader.number("tensile_up_to_MPa");
    auto minimum = printed(reader, "minimum_degC", "minimum_degF", true);
    if (const auto practice = reader.range("practice_degC");
        practice && (!minimum || celsius(practice->value.second) > minimum->value)) {
        minimum = Sourced<Temperature>{celsius(practice->value.second), practice->source};
        row.range_from = celsius(practice->value.first);
    }
    const bool has_figure =
        entry.has("minimum_degC") || entry.has("minimum_degF") || entry.has("practice_degC");
    if (!has_figure)
        entry.refuse(entry.value(), entry.path(), "has no figure",
                     R"(write "minimum_degC", "minimum_degF" or "practice_degC")");
    row.minimum = minimum.value_or(Sourced<Temperature>{celsius(0), ""});
    row.maximum = printed(reader, "maximum_degC", "maximum_degF", false);
    return row;
}

} // namespace

constinit const Record preheat_row_record{"a row of preheat", "", row_fields};
constinit const Record preheat_group_record{"a table of preheat", "", group_fields};

PreheatGroup read_preheat_group(const std::string& name, const Entry& entry, const Bibliography& sources) {
    const SourcedReader reader(entry, sources);
    PreheatGroup group;
    group.name = name;
    group.hydrogen_up_to = reader.number("hydrogen_up_to_ml_100g");
    group.hydrogen_over = reader.number("hydrogen_over_ml_100g");
    for (const Entry& row : entry.objects("rows"))
        group.rows.push_back(read_row(row, sources));
    return group;
}

PreheatGroup read_practice(const std::string& name, const Entry& entry, const Bibliography& sources) {
    if (entry.has("fillers"))
        entry.refuse("fillers", "is not for practice, which holds whatever the filler",
                     "write it under preheat_groups");
    return read_preheat_group(name, entry, sources);
}

} // namespace ringfill
