#include <ringfill/report/json/time_json.hpp>

#include <algorithm>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/say/time_sentences.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

Value step_object(const HeatStep& step) {
    Value::Object object{{"step", step_name(step.stage)}};
    if (!step.pass.empty()) {
        object.push_back({"pass", step.pass});
        object.push_back({"layer", static_cast<double>(step.layer)});
        object.push_back({"after_ring", static_cast<double>(step.after_ring)});
    }
    object.push_back({"s", step.time.value()});
    object.push_back({"from_degC", deg_c(step.from)});
    object.push_back({"to_degC", deg_c(step.to)});
    return object;
}

Value step_list(const HeatRun& run) {
    return Value(run.steps | ranges::views::transform(step_object) | ranges::to<Value::List>());
}

Value curve_list(const HeatRun& run) {
    const auto point = [](const CurvePoint& one) -> Value {
        return Value::Object{{"s", one.time.value()}, {"degC", deg_c(one.temperature)}};
    };
    return Value(run.curve | ranges::views::transform(point) | ranges::to<Value::List>());
}

} // namespace

void put_balance(Value::Object& heat, const HeatBalance& balance) {
    heat.push_back({"boss_kg", balance.hot.boss.mass.value()});
    heat.push_back({"heated_kg", balance.cold().boss.heated.value()});
    heat.push_back({"biot", balance.biot});
    if (balance.warms_up())
        heat.push_back({"preheat_kj", balance.cold().run.warm_up_heat.value() / 1e3});
    if (balance.hot.is_whole())
        heat.push_back({"peak_degC", deg_c(balance.peak())});
    heat.push_back({"heater", balance.heater.kind});
    if (balance.cold().is_whole())
        heat.push_back({"heater_kj", balance.heater_heat().value() / 1e3});
    heat.push_back({"heater_kw", balance.heater.power.value() / 1e3});
    heat.push_back({"heater_needed_kw", heater_needed(balance).value() / 1e3});
}

Value time_object(const BorePlan& bore) {
    const HeatBalance& balance = *bore.heat_balance;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    Value::Object object{{"end", words_of(end_of(balance))}};
    if (balance.warms_up())
        object.push_back({"preheat_s", cold.warm_up.value()});
    object.push_back({"arc_s", bore.metal.arc.value()});
    if (balance.hot.is_whole()) {
        object.push_back({"stops", static_cast<double>(hot.stops)});
        object.push_back({"wait_s", hot.waiting.value()});
    }
    if (balance.plated && balance.plated->is_whole())
        object.push_back({"wait_low_s", cold.waiting.value()});
    if (balance.cold().is_whole()) {
        object.push_back({"reheats", static_cast<double>(cold.reheats)});
        object.push_back({"reheat_s", cold.reheating.value()});
    }
    if (balance.hot.is_whole() && balance.cold().is_whole())
        object.push_back({"post_heat_s", std::max(hot.post_heating, cold.post_heating).value()});
    if (const auto time = longest(balance, &HeatRun::cooling_to_rough))
        object.push_back({"cool_to_rough_s", time->value()});
    if (const auto time = longest(balance, &HeatRun::cooling_to_finish))
        object.push_back({"cool_to_finish_s", time->value()});
    if (const auto time = total_time(balance, bore.metal.arc))
        object.push_back({"total_s", time->value()});
    object.push_back({"timeline", step_list(hot)});
    if (balance.plated)
        object.push_back({"timeline_plate", step_list(cold)});
    object.push_back({"curve", curve_list(hot)});
    return object;
}

} // namespace ringfill
