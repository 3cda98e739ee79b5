#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/heat/gathering.hpp>
#include <ringfill/heat/maximum_between_rings.hpp>
#include <ringfill/heat/preheat_methods.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

PreheatMethod answered(const AnsweredMethod& answer, UnitSystem units) {
    PreheatMethod method;
    method.name = answer.name;
    method.asks = answer.is(RF_NOT_USABLE)    ? Asks::unknown
                  : answer.is(RF_NONE_NEEDED) ? Asks::none
                  : answer.is(RF_NO_FIGURE)   ? Asks::unnamed
                                              : Asks::minimum;
    if (method.asks == Asks::minimum) {
        method.minimum = in_si<Temperature>(answer.number);
        method.counts = counted(*method.minimum, units);
    }
    method.is_formula = true;
    method.second_opinion = answer.is(RF_SECOND_OPINION);
    method.in_range = !answer.is(RF_OUT_OF_COMPOSITION | RF_OUT_OF_THICKNESS | RF_AT_EDGE | RF_NOT_USABLE);
    method.formula = method.asks == Asks::minimum ? answer.formula : std::string();
    method.inputs = answer.inputs;
    method.source = answer.source;
    method.note = answer.note;
    return method;
}

/// Quenched plate without a whole certificate goes by the CET that it usually has.
HeatCase as_usual(const HeatCase& heat_case) {
    HeatCase asked = heat_case;
    if (!heat_case.is_quenched() || heat_case.certified || heat_case.base->typical_cet.empty())
        return asked;
    const ThicknessRow* row = row_for(heat_case.base->typical_cet,
                                      heat_case.wall ? std::optional(mm(*heat_case.wall)) : std::nullopt);
    if (row)
        asked.reached.cet =
            std::max(row->value, heat_case.not_the_grade
                                     ? asked.reached.cet.value_or(index_of(cet_index, asked.composition))
                                     : 0.0);
    return asked;
}

/// Whether a formula rules: never beside a row of practice that holds, a table for structural steel or the
/// document that the job works by, always where the certificate denies the grade.
/// @param last_resort it was made for another alloy: where documents say something they suffice.
bool formula_rules(const Gathering& gathering, const HeatCase& heat_case, bool last_resort) {
    if (heat_case.is_unknown_metal() && heat_case.certified)
        return true;
    if (heat_case.not_the_grade)
        return true;
    if (gathering.named_rules || gathering.row_rules || gathering.structural_rules)
        return false;
    return !last_resort || !ranges::any_of(gathering.found.methods, [](const PreheatMethod& method) {
        return method.applies && method.in_range;
    });
}

/// Plate is asked for no more than it bears where its hydrogen is low.
void keep_to_the_plate(PreheatMethod& method, const HeatCase& heat_case) {
    constexpr double low_hydrogen_ml_100g = 5;
    constexpr double window_K = 25;
    if (!heat_case.is_quenched() || !method.counts ||
        !(heat_case.hydrogen_ml_100g->value <= low_hydrogen_ml_100g))
        return;
    const auto most = group_maximum(heat_case);
    if (!most)
        return;
    const Temperature bears =
        rounded_down(in_si<Temperature>(most->asked.value.value() - window_K), heat_case.rules.units);
    if (*method.counts <= bears)
        return;
    method.counts = bears;
    method.as_hot_as_it_bears = true;
    method.note +=
        fmt::format("{}kept to {:.0f} K under the maximum between rings, as hot as the plate allows",
                    method.note.empty() ? "" : "; ", window_K);
}

void join_gradually(PreheatMethod& method, const Gathering& gathering, UnitSystem units) {
    if (!method.counts || !gathering.joins_up_to)
        return;
    const Temperature most = counted(*gathering.joins_up_to, units);
    if (*method.counts <= most)
        return;
    method.counts = most;
    method.note +=
        fmt::format("{}so close past the end of the row it joins gradually", method.note.empty() ? "" : "; ");
}

/// What the grade itself asks for, where the certificate is of another steel and no row says it.
void add_grade_alone(Gathering& gathering, const HeatCase& heat_case) {
    if (!heat_case.of_the_grade || gathering.says_of_grade)
        return;
    HeatCase grade = heat_case;
    grade.not_the_grade.reset();
    grade.certified = false;
    grade.composition = heat_case.of_the_grade->shares;
    grade.reached = heat_case.of_the_grade->reached;
    const FamilyAnswer answer =
        ask(*heat_case.family->plugin, question_on("preheat", as_usual(grade)), heat_case.family->sources);
    for (const AnsweredMethod& one : answer.methods) {
        PreheatMethod method = answered(one, heat_case.rules.units);
        if (method.second_opinion || method.asks == Asks::unknown)
            continue;
        method.name += ", for the grade itself";
        method.applies = true;
        keep_to_the_plate(method, heat_case);
        gathering.found.methods.push_back(std::move(method));
    }
}

/// Unknown metal whose certificate lies within the formula's range goes by that alone.
void spare_the_row(Gathering& gathering) {
    for (PreheatMethod& method : gathering.found.methods)
        if (!method.is_formula && method.applies) {
            method.applies = false;
            method.note = "the certificate gives all elements, and the formula was made for them";
        }
}

} // namespace

void add_formula(Gathering& gathering, const HeatCase& heat_case) {
    if (!heat_case.family->plugin)
        return;
    const FamilyAnswer answer = ask(*heat_case.family->plugin, question_on("preheat", as_usual(heat_case)),
                                    heat_case.family->sources);
    for (const AnsweredMethod& one : answer.methods) {
        PreheatMethod method = answered(one, heat_case.rules.units);
        const bool last_resort = one.is(RF_AT_EDGE) && one.is(RF_SECOND_OPINION);
        const bool may_rule = !one.is(RF_NOT_USABLE) && (!one.is(RF_SECOND_OPINION) || last_resort);
        method.applies = may_rule && formula_rules(gathering, heat_case, last_resort);
        method.second_opinion = !method.applies;
        if (method.applies && heat_case.is_unknown_metal() && heat_case.certified &&
            !one.is(RF_OUT_OF_COMPOSITION))
            spare_the_row(gathering);
        if (method.applies) {
            keep_to_the_plate(method, heat_case);
            join_gradually(method, gathering, heat_case.rules.units);
        }
        // Of too much hydrogen, and of a filler that no practice for iron knows, a table's row says nothing.
        const bool outweighs_rows = heat_case.hydrogen_ml_100g->value > most_hydrogen_ml_100g ||
                                    heat_case.base->structure == "cast_iron";
        gathering.found.no_figure =
            gathering.found.no_figure || (method.applies && method.asks == Asks::unnamed && outweighs_rows);
        gathering.found.methods.push_back(std::move(method));
    }
    gathering.found.values = answer.values;
    add_grade_alone(gathering, heat_case);
}

} // namespace ringfill
