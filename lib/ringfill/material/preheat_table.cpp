#include <cmath>

#include <ringfill/material/filler.hpp>
#include <ringfill/table/figure.hpp>

namespace ringfill {
namespace {

using namespace metal_spans;

constexpr Span wall_mm{0, 10'000, true};
constexpr Span degrees_fahrenheit{-76, 1'292};

bool is_fahrenheit(const Field& field) {
    return field.name.ends_with("degF");
}

/// In the unit that the field's name ends in, to the thousandth: a figure that was typed so.
double as_printed(Temperature value, const Field& field) {
    return std::round((value.value() - field.zero) / field.factor * 1e3) / 1e3;
}

/// Of two prints of one temperature the one that is safer: the higher minimum, the lower maximum. Each is
/// kept as it is printed, for a reader of that scale.
void take_minimum(PreheatRow& row, const Entry& entry, const Field& field) {
    Sourced<Temperature> other;
    if (!FieldOf<Sourced<Temperature>>::fill(entry, field, other))
        return;
    (is_fahrenheit(field) ? row.printed_degF : row.printed_degC) = as_printed(other.value, field);
    if (row.minimum.source.empty() || other.value > row.minimum.value)
        row.minimum = other;
}

void take_maximum(PreheatRow& row, const Entry& entry, const Field& field) {
    Sourced<Temperature> other;
    if (!FieldOf<Sourced<Temperature>>::fill(entry, field, other))
        return;
    (is_fahrenheit(field) ? row.printed_maximum_degF : row.printed_maximum_degC) =
        as_printed(other.value, field);
    if (!row.maximum || other.value < row.maximum->value)
        row.maximum = other;
}

/// Of a range the upper end counts, where it is over the minimum that is printed.
void take_range(PreheatRow& row, const Entry& entry, const Field& field) {
    Sourced<std::pair<Temperature, Temperature>> range;
    if (!FieldOf<Sourced<std::pair<Temperature, Temperature>>>::fill(entry, field, range) ||
        (!row.minimum.source.empty() && !(range.value.second > row.minimum.value)))
        return;
    row.minimum = {range.value.second, range.source};
    row.range_from = range.value.first;
    row.printed_degC = as_printed(range.value.second, field);
}

/// A figure of a temperature that fills more than a member, in the unit that its name ends in.
template <auto Reader>
constexpr Field temperature(std::string_view name, Kind kind, Span span, std::string_view sample) {
    Field made = field<Reader>(name, span, sample).holds(kind);
    take_unit_from_name<Temperature>(made);
    return made;
}

constexpr Field row_fields[] = {
    field<&PreheatRow::up_to>("up_to_mm", wall_mm, R"([25, "B31.3-2014"])"),
    field<&PreheatRow::carbon_up_to_pct>("carbon_up_to_pct", percent, R"([0.30, "B31.3-2014"])"),
    field<&PreheatRow::tensile_up_to_MPa>("tensile_up_to_MPa", strength, R"([450, "B31.3-2014"])"),
    temperature<&take_minimum>("minimum_degC", Kind::sourced, degC, R"([95, "B31.3-2014"])"),
    temperature<&take_minimum>("minimum_degF", Kind::sourced, degrees_fahrenheit, R"([150, "D1.1"])"),
    temperature<&take_range>("practice_degC", Kind::sourced_range, degC, R"([150, 200, "practice"])"),
    temperature<&take_maximum>("maximum_degC", Kind::sourced, degC, R"([315, "B31.3-2014"])"),
    temperature<&take_maximum>("maximum_degF", Kind::sourced, degrees_fahrenheit, R"([500, "NAVSEA"])"),
};

void check_row(PreheatRow&, const Entry& entry) {
    if (!entry.has("minimum_degC") && !entry.has("minimum_degF") && !entry.has("practice_degC"))
        entry.refuse("has no figure", R"(write "minimum_degC", "minimum_degF" or "practice_degC")");
}

constexpr Record row_record = record_of<PreheatRow, check_row>("a row of preheat", "", row_fields);

constexpr Field group_fields[] = {
    field<&PreheatGroup::hydrogen_up_to>("hydrogen_up_to_ml_100g", hydrogen, R"([8, "practice"])"),
    field<&PreheatGroup::hydrogen_over>("hydrogen_over_ml_100g", hydrogen, R"([16, "practice"])"),
    field<&PreheatGroup::heat_input_from>("heat_input_from_kJ_mm", Span{0, 100, true},
                                          R"([1.7, "practice"])"),
    field<&PreheatGroup::document>("document", table_words, R"("AWS D1.1")"),
    field<&PreheatGroup::only_if_named>("only_if_named", "true"),
    field<&PreheatGroup::structural>("structural", "true"),
    field<&PreheatGroup::in_place_of_practice>("in_place_of_practice", "true"),
    // Only a whole family knows which of its fillers there are.
    names_of_family("fillers", 50, R"(["ER410NiMo"])"),
    must<&PreheatGroup::rows>("rows", list_of(row_record, 1, 50),
                              R"([{ "practice_degC": [150, 200, "practice"] }])"),
};

} // namespace

const Record preheat_group_record = record_of<PreheatGroup>("a table of preheat", "", group_fields);

void name_practice(std::optional<PreheatGroup>& practice, std::string name, const Entry& owner) {
    if (!practice)
        return;
    practice->name = std::move(name);
    if (const Value* fillers = owner.find(owner.field("practice"))->find("fillers"))
        owner.refuse(*fillers, member_path(owner.path_of("practice"), "fillers"),
                     "is not for practice, which holds whatever the filler", "write it under preheat_groups");
}

} // namespace ringfill
