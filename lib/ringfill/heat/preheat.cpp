#include <ringfill/heat/preheat.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/algorithm/none_of.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/preheat_methods.hpp>
#include <ringfill/material/answer.hpp>

namespace ringfill {
namespace {

/// Of the methods that apply the one that asks for the most, and never less than the chill-off temperature.
void let_the_highest_rule(Preheat& result) {
    if (ranges::none_of(result.methods, &PreheatMethod::applies))
        return;
    AskedTemperature asked{chill_off, "dry and hand-warm", "practice"};
    std::vector<double> minima{chill_off.value()};
    PreheatMethod* ruling = nullptr;
    for (PreheatMethod& method : result.methods)
        if (method.applies && method.minimum) {
            minima.push_back(method.minimum->value());
            if (*method.minimum > asked.value) {
                ruling = &method;
                asked = {*method.minimum, method.name, method.source};
            }
        }
    if (ruling)
        ruling->rules = true;
    asked.formula = "highest(T) - 273.15";
    asked.inputs = {{"T", minima, "K"}};
    result.minimum = std::move(asked);
}

/// What the tables say of the metal and of the filler itself. Metal that goes by its own practice is spared
/// what a filler asks for to be kept hot, and so is steel that softens.
void take_table_advice(Preheat& result, const HeatCase& heat_case) {
    const bool own_heat = !why_not_for_filler(heat_case.base->structure).empty();
    const bool in_the_open = own_heat || cools_in_the_open(*heat_case.base);
    result.advice.insert(result.advice.begin(), heat_case.base->advice.begin(), heat_case.base->advice.end());
    for (const Advice& advice : heat_case.filler->advice)
        if (!(own_heat && advice.kind == "soak") && !(in_the_open && advice.kind == "slow_cooling"))
            result.advice.push_back(advice);
}

/// What the family advises once the minimum is settled: a hold after welding is never colder than that.
void take_advice(Preheat& result, const HeatCase& heat_case) {
    if (!heat_case.family->plugin)
        return;
    Question question = question_on("advice", heat_case);
    if (result.minimum)
        question.numbers.emplace_back("preheat_min_K", result.minimum->value.value());
    if (result.interpass_max && !result.interpass_max->is_usual)
        question.numbers.emplace_back("interpass_max_K", result.interpass_max->value.value());
    FamilyAnswer answer = ask(*heat_case.family->plugin, question, heat_case.family->sources);
    ranges::push_back(result.values, std::move(answer.values));
    result.advice = std::move(answer.advice);
}

void let_the_family_hold(Preheat& result) {
    const auto temperature = ranges::find(result.values, "post_heat_K", &AnsweredFigure::name);
    const auto time = ranges::find(result.values, "post_heat_s", &AnsweredFigure::name);
    if (temperature != result.values.end() && time != result.values.end())
        result.post_heat = PostHeat{asked_by_family(*temperature), in_si<Time>(time->number), *time};
}

/// An approved minimum of hand-warm is a figure where a method asks for more.
PreheatState asked_of(const Preheat& found) {
    if (!found.minimum)
        return PreheatState::not_known;
    if (lacks_figure(found.minimum->value, found.methods))
        return PreheatState::needed_without_figure;
    const bool asks = ranges::any_of(found.methods, [](const PreheatMethod& method) {
        return method.applies && method.minimum && *method.minimum > chill_off;
    });
    return asks || found.minimum->value > chill_off ? PreheatState::figure : PreheatState::none;
}

AskedTemperature by_approved(Temperature value, const Approved& approved) {
    return {value,
            fmt::format("the approved procedure {}", approved.reference),
            "approved",
            "T_approved - 273.15",
            {{"T_approved", value.value(), "K"}}};
}

/// What an approved maximum is held against: a document's, else what the tempering allows, else the highest
/// that common practice goes to.
AskedTemperature firm_maximum(const Preheat& preheat, const HeatCase& heat_case) {
    if (preheat.interpass_max && !preheat.interpass_max->is_usual)
        return *preheat.interpass_max;
    if (auto tempered = softens_over(heat_case))
        return *tempered;
    return {usual_maximum, "common practice", "practice"};
}

void hold_as_approved(Preheat& preheat, const HeatCase& heat_case, PostHeat hold) {
    const Temperature at = hold.temperature.value;
    if (auto most = softens_over(heat_case); most && at > most->value)
        preheat.overruled.hold_most = std::move(most);
    if (preheat.post_heat &&
        (preheat.post_heat->temperature.value > at || preheat.post_heat->time > hold.time))
        preheat.overruled.post_heat = preheat.post_heat;
    preheat.post_heat = std::move(hold);
}

void let_approved_minimum_rule(Preheat& preheat, const Approved& approved) {
    if (!approved.preheat_min)
        return;
    AskedTemperature asked = by_approved(*approved.preheat_min, approved);
    if (asked.value < chill_off) {
        asked.value = chill_off;
        asked.by = fmt::format("{}, raised to hand-warm", asked.by);
        asked.formula = "max(T_approved, T_dry) - 273.15";
        asked.inputs.emplace_back("T_dry", chill_off.value(), "K");
    }
    preheat.minimum = std::move(asked);
    for (PreheatMethod& method : preheat.methods)
        method.rules = false;
}

void let_approved_rest_rule(Preheat& preheat, const HeatCase& heat_case, const Approved& approved) {
    if (auto most = softens_over(heat_case);
        most && approved.preheat_min && *approved.preheat_min > most->value)
        preheat.overruled.preheat_most = std::move(most);
    if (approved.interpass_max) {
        AskedTemperature asked = by_approved(*approved.interpass_max, approved);
        if (auto firm = firm_maximum(preheat, heat_case); firm.value < asked.value)
            preheat.overruled.interpass_max = std::move(firm);
        preheat.interpass_max = std::move(asked);
    }
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        hold_as_approved(
            preheat, heat_case,
            {by_approved(*approved.post_heat->temperature, approved), *approved.post_heat->time, {}, true});
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

Preheat preheat(const HeatCase& heat_case, const Approved* approved) {
    Preheat result;
    if (approved)
        result.approved = approved->reference;
    result.doubt = heat_case.doubt;
    if (heat_case.doubt)
        return result;
    gather_methods(result, heat_case);
    let_the_highest_rule(result);
    if (approved)
        let_approved_minimum_rule(result, *approved);
    result.interpass_max = interpass_maximum(heat_case, result);
    take_advice(result, heat_case);
    take_table_advice(result, heat_case);
    let_the_family_hold(result);
    result.interpass_max = interpass_maximum(heat_case, result);
    if (approved)
        let_approved_rest_rule(result, heat_case, *approved);
    result.asked = asked_of(result);
    const bool closed =
        result.minimum && result.interpass_max && result.minimum->value > result.interpass_max->value;
    result.state = closed ? PreheatState::contradictory : result.asked;
    return result;
}

} // namespace ringfill
