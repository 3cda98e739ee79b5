#include <ringfill/heat/preheat.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/preheat_methods.hpp>
#include <ringfill/material/answer.hpp>

namespace ringfill {
namespace {

/// Of the methods that apply the one that asks for the most; null when none names a temperature.
PreheatMethod* highest(std::vector<PreheatMethod>& methods) {
    PreheatMethod* most = nullptr;
    for (PreheatMethod& method : methods)
        if (method.applies && method.minimum && (!most || *method.minimum > *most->minimum))
            most = &method;
    return most;
}

bool any_applies(const std::vector<PreheatMethod>& methods) {
    return std::any_of(methods.begin(), methods.end(), [](const PreheatMethod& m) { return m.applies; });
}

/// The highest of the minima and the chill-off temperature, as arithmetic.
void work_out(AskedTemperature& asked, const std::vector<PreheatMethod>& methods) {
    asked.formula = "highest(T) - 273.15";
    std::vector<double> minima{chill_off.value()};
    for (const PreheatMethod& method : methods)
        if (method.applies && method.minimum)
            minima.push_back(method.minimum->value());
    asked.inputs = {{"T", minima, "K"}};
}

void let_the_highest_rule(Preheat& result) {
    if (!any_applies(result.methods))
        return;
    AskedTemperature asked{chill_off, "dry and hand-warm", "practice"};
    if (PreheatMethod* most = highest(result.methods)) {
        most->rules = *most->minimum > chill_off;
        if (most->rules)
            asked = {*most->minimum, most->name, most->source};
    }
    work_out(asked, result.methods);
    result.minimum = std::move(asked);
}

const AnsweredFigure* value_of(const Preheat& result, std::string_view name) {
    for (const AnsweredFigure& value : result.values)
        if (value.name == name)
            return &value;
    return nullptr;
}

/// What the tables say of the metal and of the filler itself. Metal that goes by its own practice is spared
/// what a filler asks for to be kept hot, and so is steel that softens.
void take_table_advice(Preheat& result, const HeatCase& what) {
    const bool own_heat = !why_not_for_filler(what.base->structure).empty();
    const bool in_the_open = own_heat || cools_in_the_open(*what.base);
    result.advice.insert(result.advice.begin(), what.base->advice.begin(), what.base->advice.end());
    for (const Advice& advice : what.filler->advice)
        if (!(own_heat && advice.kind == "soak") && !(in_the_open && advice.kind == "slow_cooling"))
            result.advice.push_back(advice);
}

/// What the family advises once the minimum is settled: a hold after welding is never colder than that.
void take_advice(Preheat& result, const HeatCase& what) {
    if (!what.family->plugin)
        return;
    Question question = question_on("advice", what);
    if (result.minimum)
        question.numbers.emplace_back("preheat_min_K", result.minimum->value.value());
    if (result.interpass_max && !result.interpass_max->is_usual)
        question.numbers.emplace_back("interpass_max_K", result.interpass_max->value.value());
    FamilyAnswer answer = ask(*what.family->plugin, question, what.family->sources);
    for (AnsweredFigure& value : answer.values)
        result.values.push_back(std::move(value));
    result.advice = std::move(answer.advice);
}

void let_the_family_hold(Preheat& result) {
    const AnsweredFigure* temperature = value_of(result, "post_heat_K");
    const AnsweredFigure* time = value_of(result, "post_heat_s");
    if (temperature && time)
        result.post_heat = PostHeat{asked_by_family(*temperature), in_si<Time>(time->number), *time};
}

bool asks_for_more_than_hand_warm(const PreheatMethod& method) {
    return method.applies && method.minimum && *method.minimum > chill_off;
}

/// An approved minimum of hand-warm is a figure where a method asks for more.
PreheatState asked_of(const Preheat& found) {
    if (!found.minimum)
        return PreheatState::not_known;
    if (lacks_figure(found.minimum->value, found.methods))
        return PreheatState::needed_without_figure;
    return found.minimum->value > chill_off || ranges::any_of(found.methods, asks_for_more_than_hand_warm)
               ? PreheatState::figure
               : PreheatState::none;
}

} // namespace

bool lacks_figure(Temperature minimum, const std::vector<PreheatMethod>& methods) {
    return minimum <= chill_off && ranges::any_of(methods, [](const PreheatMethod& method) {
               return method.applies && method.asks == Asks::unnamed;
           });
}

AskedTemperature asked_by_family(const AnsweredFigure& value) {
    return {in_si<Temperature>(value.number),
            "the rules of the family",
            value.source,
            value.formula.empty() ? std::string() : fmt::format("({}) - 273.15", value.formula),
            value.inputs,
            false,
            true};
}

Preheat preheat(const HeatCase& what, const Approved* approved) {
    Preheat result;
    if (approved)
        result.approved = approved->reference;
    result.doubt = what.doubt;
    if (what.doubt)
        return result;
    GatheredMethods found = gather_methods(what);
    result.methods = std::move(found.methods);
    result.values = std::move(found.values);
    result.filler_range = std::move(found.filler_range);
    let_the_highest_rule(result);
    if (approved)
        let_approved_minimum_rule(result, *approved);
    result.interpass_max = interpass_maximum(what, result.minimum, result.methods, result.values);
    take_advice(result, what);
    take_table_advice(result, what);
    let_the_family_hold(result);
    result.interpass_max = interpass_maximum(what, result.minimum, result.methods, result.values);
    if (approved)
        let_approved_rest_rule(result, what, *approved);
    result.asked = asked_of(result);
    const bool closed =
        result.minimum && result.interpass_max && result.minimum->value > result.interpass_max->value;
    result.state = closed ? PreheatState::contradictory : result.asked;
    return result;
}

} // namespace ringfill
