#include <ringfill/heat/preheat_methods.hpp>

#include <algorithm>

#include <range/v3/action/push_back.hpp>

#include <fmt/format.h>

#include <ringfill/material/ask.hpp>

namespace ringfill {
namespace {

/// The methods so far, and what they leave open.
struct Gathering {
    GatheredMethods found;
    bool practice_rules = false;    ///< the grade's own row holds in every respect
    bool has_row = false;           ///< some table lists the grade
    bool wants_unknown_row = false; ///< knowledge is missing: the row for unknown metal counts too
};

PreheatMethod row_method(const PreheatGroup& group, const RowAnswer& row) {
    PreheatMethod method;
    method.name = group.name;
    method.asks = Asks::minimum;
    method.minimum = row.minimum.value;
    method.maximum = row.maximum;
    method.applies = true;
    method.source = row.minimum.source;
    if (row.for_the_worst)
        method.note = "the worst row that may fit, for what the job does not say";
    return method;
}

/// What a table asks for at most.
RowAnswer hottest_row(const PreheatGroup& group) {
    const auto hottest =
        std::max_element(group.rows.begin(), group.rows.end(), [](const PreheatRow& a, const PreheatRow& b) {
            return a.minimum.value < b.minimum.value;
        });
    return {hottest->minimum, hottest->maximum, false};
}

void add_practice(Gathering& gathering, const HeatCase& what) {
    const auto& practice = what.base->practice;
    if (!practice)
        return;
    const auto row = look_up(*practice, preheat_case(what));
    PreheatMethod method = row_method(*practice, row ? *row : hottest_row(*practice));
    if (what.not_the_grade) {
        method.applies = false;
        method.in_range = false;
        method.note = fmt::format("the mill certificate is of another steel: {}", *what.not_the_grade);
    } else if (!row) {
        method.in_range = false;
        method.note = "it ends before this wall, so its hottest row is taken";
        gathering.wants_unknown_row = true;
    } else if (!holds_for_hydrogen(*practice, preheat_case(what).hydrogen_ml_100g)) {
        method.in_range = false;
        method.note = fmt::format("made for hydrogen up to {:.3g} ml/100 g", practice->hydrogen_up_to->value);
    } else {
        gathering.practice_rules = true;
    }
    gathering.has_row = gathering.has_row || method.applies;
    gathering.found.methods.push_back(std::move(method));
}

void add_groups(Gathering& gathering, const HeatCase& what) {
    for (const std::string& name : what.base->preheat_groups)
        for (const PreheatGroup& group : what.family->preheat_groups) {
            if (group.name != name || !holds_for_hydrogen(group, preheat_case(what).hydrogen_ml_100g))
                continue;
            const auto row = look_up(group, preheat_case(what));
            if (!row)
                continue;
            PreheatMethod method = row_method(group, *row);
            if (what.not_the_grade) {
                method.applies = false;
                method.in_range = false;
                method.note = "it does not list the steel of the mill certificate";
            }
            gathering.has_row = gathering.has_row || method.applies;
            gathering.found.methods.push_back(std::move(method));
        }
}

PreheatMethod answered(const AnsweredMethod& answer) {
    PreheatMethod method;
    method.name = answer.name;
    method.asks = answer.not_usable    ? Asks::unknown
                  : answer.none_needed ? Asks::none
                  : answer.no_figure   ? Asks::unnamed
                                       : Asks::minimum;
    if (method.asks == Asks::minimum)
        method.minimum = in_si<Temperature>(answer.number);
    method.in_range = !answer.out_of_composition && !answer.out_of_thickness && !answer.not_usable;
    method.formula = method.asks == Asks::minimum ? answer.formula : std::string();
    method.inputs = answer.inputs;
    method.source = answer.source;
    method.note = answer.note;
    return method;
}

void add_rules(Gathering& gathering, const HeatCase& what) {
    if (!what.family->plugin)
        return;
    const FamilyAnswer answer = ask(*what.family->plugin, question_on("preheat", what), what.family->sources);
    for (const AnsweredMethod& one : answer.methods) {
        if (one.out_of_composition && one.at_edge && gathering.practice_rules)
            continue; // the grade's own row rules; the method as it stands is told as information
        PreheatMethod method = answered(one);
        method.applies = !one.second_opinion && !one.not_usable &&
                         ((!one.out_of_composition && !one.out_of_thickness) || one.at_edge);
        if (one.at_edge && !gathering.has_row)
            gathering.wants_unknown_row = true;
        gathering.found.methods.push_back(std::move(method));
    }
    gathering.found.values = answer.values;
    FamilyAnswer more = ask(*what.family->plugin, question_on("advice", what), what.family->sources);
    ranges::push_back(gathering.found.values, more.values);
    gathering.found.advice = std::move(more.advice);
}

void add_unknown_row(Gathering& gathering, const HeatCase& what) {
    const bool nothing_applies = std::none_of(gathering.found.methods.begin(), gathering.found.methods.end(),
                                              [](const PreheatMethod& method) { return method.applies; });
    if (what.is_unknown_metal() || !(gathering.wants_unknown_row || what.not_the_grade || nothing_applies))
        return;
    for (const Base& base : what.family->bases)
        if (base.name == unknown_metal && base.practice && base.structure == what.base->structure)
            if (const auto row = look_up(*base.practice, preheat_case(what))) {
                PreheatMethod method = row_method(*base.practice, *row);
                method.note = "taken because the other methods do not reach this metal or wall";
                gathering.found.methods.push_back(std::move(method));
            }
}

} // namespace

GatheredMethods gather_methods(const HeatCase& what) {
    Gathering gathering;
    add_practice(gathering, what);
    add_groups(gathering, what);
    add_rules(gathering, what);
    add_unknown_row(gathering, what);
    return std::move(gathering.found);
}

} // namespace ringfill
