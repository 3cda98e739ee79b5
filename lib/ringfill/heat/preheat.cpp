#include <ringfill/heat/preheat.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/hold.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/maximum_between_rings.hpp>
#include <ringfill/heat/preheat_methods.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/heat/what_lowers.hpp>
#include <ringfill/material/answer.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Of the methods that apply the one that asks for the most, and never less than the chill-off temperature.
void let_the_highest_rule(Preheat& result) {
    AskedTemperature asked{chill_off, "dry and hand-warm", "practice"};
    std::vector<double> minima{chill_off.value()};
    PreheatMethod* ruling = nullptr;
    for (PreheatMethod& method : result.methods)
        if (method.applies && method.counts) {
            minima.push_back(method.counts->value());
            if (*method.counts > asked.value) {
                ruling = &method;
                asked = {*method.counts, method.name, method.source};
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

void let_the_family_hold(Preheat& result, UnitSystem units) {
    const auto temperature = ranges::find(result.values, "post_heat_K", &AnsweredFigure::name);
    const auto time = ranges::find(result.values, "post_heat_s", &AnsweredFigure::name);
    if (temperature == result.values.end() || time == result.values.end())
        return;
    result.post_heat = PostHeat{asked_by_family(*temperature), in_si<Time>(time->number), *time};
    AskedTemperature& asked = result.post_heat->temperature;
    asked.value = printed_minimum(asked.value, deg_c(asked.value), {}, units).value;
    if (units == UnitSystem::inch)
        asked.formula.clear();
}

/// Whether a method that applies says how much, none included.
bool says_how_much(const Preheat& found) {
    return ranges::any_of(found.methods, [](const PreheatMethod& method) {
        return method.applies && (method.counts || method.asks == Asks::none);
    });
}

PreheatState asked_of(const Preheat& found) {
    const bool is_cold = found.minimum->value <= chill_off;
    const bool asks_unnamed = ranges::any_of(found.methods, [](const PreheatMethod& method) {
        return method.applies && method.asks == Asks::unnamed;
    });
    const bool is_approved = found.minimum->source == "approved" && !is_cold;
    if (!is_approved && (found.no_figure || !says_how_much(found) || (is_cold && asks_unnamed)))
        return PreheatState::needed_without_figure;
    return is_cold ? PreheatState::none : PreheatState::figure;
}

AskedTemperature by_approved(Temperature value, const Approved& approved) {
    return {value,
            fmt::format("the approved procedure {}", approved.reference),
            "approved",
            "T_approved - 273.15",
            {{"T_approved", value.value(), "K"}}};
}

/// What an approved maximum is held against: our own, and where that is practice alone how far it gives way.
AskedTemperature firm_maximum(const Preheat& preheat, const HeatCase& heat_case) {
    AskedTemperature most = *preheat.interpass_max;
    const auto group = group_maximum(heat_case);
    if (most.is_usual && group && group->gives_way_to && *group->gives_way_to > most.value)
        most.value = *group->gives_way_to;
    return most;
}

void hold_as_approved(Preheat& preheat, const HeatCase& heat_case, PostHeat hold) {
    const Temperature at = hold.temperature.value;
    if (auto most = softening_stop(heat_case); most && at > most->value)
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

void let_approved_maximum_rule(Preheat& preheat, const HeatCase& heat_case, const Approved& approved) {
    const auto softens = softening_stop(heat_case);
    if (softens && approved.preheat_min && *approved.preheat_min > softens->value)
        preheat.overruled.preheat_most = softens;
    if (!approved.interpass_max)
        return;
    AskedTemperature asked = by_approved(*approved.interpass_max, approved);
    if (softens && softens->value < asked.value)
        preheat.overruled.rings_most = softens;
    if (preheat.interpass_max)
        if (auto firm = firm_maximum(preheat, heat_case); firm.value < asked.value)
            preheat.overruled.interpass_max = std::move(firm);
    preheat.interpass_max = std::move(asked);
}

void let_approved_hold_rule(Preheat& preheat, const HeatCase& heat_case, const Approved& approved) {
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        hold_as_approved(
            preheat, heat_case,
            {by_approved(*approved.post_heat->temperature, approved), *approved.post_heat->time, {}, true});
}

} // namespace

AskedTemperature asked_by_family(const AnsweredFigure& value) {
    return {in_si<Temperature>(value.number),
            "the rules of the family",
            value.source,
            value.formula.empty() ? std::string() : fmt::format("({}) - 273.15", value.formula),
            value.inputs,
            false,
            true};
}

Preheat preheat(const HeatCase& given, const Approved* approved) {
    HeatCase heat_case = given;
    if (!heat_case.hydrogen_ml_100g) // what is not known is taken for the worst
        heat_case.hydrogen_ml_100g = {most_hydrogen_ml_100g, "hydrogen-unclassed"};
    Preheat result;
    result.welding_rules = heat_case.rules.document;
    if (approved) {
        result.approved = approved->reference;
        result.approved_confirmed = approved->confirmed;
    }
    result.doubt = heat_case.doubt;
    if (heat_case.doubt)
        return result;
    gather_methods(result, heat_case);
    let_the_highest_rule(result);
    result.lowered_by = what_lowers(result, heat_case);
    if (approved)
        let_approved_minimum_rule(result, *approved);
    result.interpass_max = maximum_between_rings(heat_case, result);
    take_advice(result, heat_case);
    let_the_family_hold(result, heat_case.rules.units);
    result.interpass_max = maximum_between_rings(heat_case, result);
    if (approved)
        let_approved_maximum_rule(result, heat_case, *approved);
    advise_after_welding(result, heat_case);
    take_table_advice(result, heat_case);
    if (approved)
        let_approved_hold_rule(result, heat_case, *approved);
    result.later = later_layers(heat_case, result);
    result.asked = asked_of(result);
    const double window_K = result.interpass_max
                                ? result.interpass_max->value.value() - result.minimum->value.value() + 1e-6
                                : narrow_window_K;
    const bool both_are_told = result.asked != PreheatState::needed_without_figure ||
                               (result.interpass_max && result.interpass_max->source == "approved");
    result.closed = both_are_told && window_K < least_window_K;
    result.narrow = !result.closed && window_K < narrow_window_K;
    result.state = result.closed ? PreheatState::contradictory : result.asked;
    return result;
}

} // namespace ringfill
