#include <cmath>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/max_element.hpp>

#include <ringfill/heat/gathering.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/heat/unknown_metal.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Past the end of a row a formula that asks for more joins no faster than this [own choice].
constexpr double joins_K_per_mm = 25;
constexpr double joins_K_per_ml = 50;

/// The table that stands in the place of the grade's own row with this filler, if any.
const PreheatGroup* in_its_place(const HeatCase& heat_case) {
    for (const PreheatGroup& group : heat_case.family->preheat_groups)
        if (group.in_place_of_practice && ranges::contains(group.fillers, heat_case.filler_name) &&
            ranges::contains(heat_case.base->preheat_groups, group.name))
            return &group;
    return nullptr;
}

/// How a row holds for a case.
struct Holds {
    bool wall = true;
    bool hydrogen = true;
    bool heat_input = true;
    bool all() const { return wall && hydrogen && heat_input; }
};

Holds holding(const PreheatGroup& group, const HeatCase& heat_case, bool has_row) {
    const auto& heat = heat_case.lowest_heat_input;
    return {has_row && (heat_case.wall || !group.rows.back().up_to), holds_for_hydrogen(group, heat_case),
            !group.heat_input_from || (heat && *heat >= group.heat_input_from->value * (1 - 1e-9))};
}

/// Over its hydrogen: as much more as method B asks for that.
void rise(PreheatMethod& method, double made_for, double hydrogen, UnitSystem units) {
    const double row = deg_c(*method.minimum);
    const double more = 62 * (std::pow(hydrogen, 0.35) - std::pow(made_for, 0.35));
    method.minimum = celsius(row + more);
    method.counts = counted(*method.minimum, units);
    method.formula = "T_row + 62*(H^0.35 - H_0^0.35)";
    method.inputs = {{"T_row", row, "°C"}, {"H", hydrogen, "ml/100 g"}, {"H_0", made_for, "ml/100 g"}};
    method.note = fmt::format("raised, since it was made for hydrogen up to {:.3g} ml/100 g", made_for);
}

void say_why_not(PreheatMethod& method, const Holds& holds, const PreheatGroup& group) {
    std::string why;
    const auto add = [&](const std::string& part) { why += (why.empty() ? "" : "; ") + part; };
    if (!holds.wall)
        add("past its table: it ends before this wall, or may, so its hottest row is taken");
    if (!holds.hydrogen)
        add(fmt::format("made for hydrogen up to {:.3g} ml/100 g", group.hydrogen_up_to->value));
    if (!holds.heat_input)
        add(fmt::format("made for heat input from {:.3g} kJ/mm", kj_mm(group.heat_input_from->value)));
    if (!why.empty())
        method.note = why;
}

/// Close past the end of the row, by wall or by hydrogen.
void bound_the_formula(Gathering& gathering, const HeatCase& heat_case, const PreheatGroup& group,
                       const Holds& holds, Temperature least) {
    if (!holds.heat_input || heat_case.not_the_grade || !heat_case.wall)
        return;
    double joins_K = 0;
    if (!holds.wall && group.rows.back().up_to)
        joins_K += joins_K_per_mm * (mm(*heat_case.wall) - mm(group.rows.back().up_to->value));
    if (!holds.hydrogen && heat_case.is_quenched()) // the others rise by themselves
        joins_K += joins_K_per_ml * (heat_case.hydrogen_ml_100g->value - group.hydrogen_up_to->value);
    gathering.joins_up_to = in_si<Temperature>(least.value() + joins_K);
}

/// Unknown metal with a certificate that method B was not made for: the row of the likest known grade.
const PreheatGroup* row_of_unknown(const HeatCase& heat_case) {
    if (!heat_case.certified)
        return &*heat_case.base->practice;
    const Base* likest = likest_grade(heat_case);
    return likest ? &*likest->practice : nullptr;
}

/// Of the rows of all grades for this wall the hottest.
std::optional<PreheatMethod> hottest_of_all(const HeatCase& heat_case) {
    std::optional<PreheatMethod> hottest;
    for (const Base& base : heat_case.family->bases) {
        if (!base.practice || base.structure != heat_case.base->structure)
            continue;
        const auto row = look_up(*base.practice, heat_case);
        PreheatMethod method =
            row_method(*base.practice, row ? *row : hottest_row(*base.practice), heat_case);
        if (!holds_for_hydrogen(*base.practice, heat_case))
            rise(method, base.practice->hydrogen_up_to->value, heat_case.hydrogen_ml_100g->value,
                 heat_case.rules.units);
        if (!hottest || *method.minimum > *hottest->minimum)
            hottest = std::move(method);
    }
    return hottest;
}

} // namespace

Temperature counted(Temperature computed, UnitSystem units) {
    return computed <= chill_off ? chill_off : rounded_up(computed, units);
}

RowAnswer hottest_row(const PreheatGroup& group) {
    return {*ranges::max_element(group.rows, {}, [](const PreheatRow& row) { return row.minimum.value; })};
}

PreheatMethod row_method(const PreheatGroup& group, const RowAnswer& row, const HeatCase& heat_case) {
    const UnitSystem units = heat_case.rules.units;
    PreheatMethod method;
    method.name = group.name;
    method.asks = Asks::minimum;
    method.minimum = row.minimum.value;
    method.counts = row.minimum.value <= chill_off
                        ? chill_off
                        : printed_minimum(row.minimum.value, row.printed_degC, row.printed_degF, units).value;
    method.range_from = row.range_from;
    if (row.maximum)
        method.maximum = Sourced<Temperature>{
            printed_maximum(row.maximum->value, row.printed_maximum_degC, row.printed_maximum_degF, units)
                .value,
            row.maximum->source};
    method.applies = true;
    method.source = row.minimum.source;
    if (row.for_the_worst)
        method.note = "the worst row that may fit, for what the job does not say";
    return method;
}

void add_own_row(Gathering& gathering, const HeatCase& heat_case) {
    const PreheatGroup* in_place = in_its_place(heat_case);
    const auto& practice = heat_case.base->practice;
    const PreheatGroup* group = in_place                       ? in_place
                                : !practice                    ? nullptr
                                : heat_case.is_unknown_metal() ? row_of_unknown(heat_case)
                                                               : &*practice;
    if (!group) {
        if (practice && heat_case.is_unknown_metal())
            if (auto hottest = hottest_of_all(heat_case)) {
                hottest->note = "no known grade holds so much, so the hottest row of this wall is taken";
                hottest->applies = !heat_case.is_quenched(); // whose certificate takes its place
                gathering.found.methods.push_back(std::move(*hottest));
            }
        return;
    }
    const auto row = look_up(*group, heat_case);
    const Holds holds = holding(*group, heat_case, row.has_value());
    PreheatMethod method = row_method(*group, row ? *row : hottest_row(*group), heat_case);
    const bool quenched = heat_case.is_quenched();
    say_why_not(method, holds, *group);
    if (!holds.hydrogen && !quenched)
        rise(method, group->hydrogen_up_to->value, heat_case.hydrogen_ml_100g->value, heat_case.rules.units);
    if (heat_case.not_the_grade)
        method.note = fmt::format("the mill certificate is of another steel: {}", *heat_case.not_the_grade);
    method.in_range = holds.all() && !heat_case.not_the_grade;
    const bool in_range = quenched ? holds.all() : holds.wall;
    const bool usable = !heat_case.not_the_grade && in_range;
    gathering.says_of_grade = gathering.says_of_grade || in_range;
    if (quenched && heat_case.certified && !heat_case.not_the_grade && !in_place) {
        method.applies = false;
        method.note = "a certificate that gives all elements takes its place";
    }
    if (gathering.named_rules) {
        method.applies = false;
        method.note = "the job works by " + heat_case.rules.document;
    }
    // The row for consumables of the plate's strength takes the place of a maker's row alone.
    const bool formula_beside = in_place && (!practice || heat_case.certified);
    gathering.row_rules = usable && method.applies && !formula_beside;
    if (!usable && method.applies)
        bound_the_formula(gathering, heat_case, *group, holds, *method.counts);
    gathering.found.methods.push_back(std::move(method));
}

} // namespace ringfill
