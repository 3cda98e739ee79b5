#include <ringfill/report/json/heat_json.hpp>

#include <algorithm>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/report/json/working_json.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

std::string_view asks_in_words(Asks asks) {
    switch (asks) {
    case Asks::minimum:
        return "minimum";
    case Asks::none:
        return "none";
    case Asks::unnamed:
        return "preheat without a figure";
    case Asks::unknown:
        break;
    }
    return "no answer";
}

Value method_object(const PreheatMethod& method) {
    Value::Object object{{"name", method.name}, {"asks", asks_in_words(method.asks)}};
    if (method.minimum)
        object.push_back({"minimum_degC", deg_c(*method.minimum)});
    object.push_back({"applies", method.applies});
    object.push_back({"rules", method.rules});
    object.push_back({"in_range", method.in_range});
    if (!method.formula.empty())
        object.push_back({"formula", method.formula});
    if (!method.inputs.empty())
        object.push_back({"inputs", inputs_object(method.inputs)});
    if (!method.note.empty())
        object.push_back({"note", method.note});
    object.push_back({"source", method.source});
    return object;
}

Value advice_object(const Advice& advice) {
    return Value::Object{{"kind", advice.kind}, {"text", advice.text}, {"source", advice.source}};
}

Value heat_input_object(const BoreHeat& heat) {
    Value::Object object{{"bore", kj_mm(*heat.bore)}};
    if (!heat.faces.empty())
        object.push_back({"face", kj_mm(*std::min_element(heat.faces.begin(), heat.faces.end()))});
    std::optional<EnergyPerLength> groove;
    for (const auto& one : heat.grooves)
        if (one && (!groove || *one < *groove))
            groove = one;
    if (groove)
        object.push_back({"groove", kj_mm(*groove)});
    return object;
}

void put_preheat(Value::Object& object, const Preheat& preheat) {
    if (preheat.minimum) {
        object.push_back({"preheat_min_degC", deg_c(preheat.minimum->value)});
        object.push_back({"preheat_by", preheat.minimum->by});
    }
    if (preheat.state != PreheatState::not_known)
        object.push_back({"no_preheat", preheat.state == PreheatState::none});
    if (preheat.interpass_max) {
        object.push_back({"interpass_max_degC", deg_c(preheat.interpass_max->value)});
        object.push_back({"interpass_by", preheat.interpass_max->by});
    }
    object.push_back({"contradictory", preheat.state == PreheatState::contradictory});
    if (!preheat.approved.empty())
        object.push_back({"approved", preheat.approved});
}

Value values_object(const Preheat& preheat) {
    Value::Object object;
    for (const AnsweredFigure& value : preheat.values)
        object.push_back({value.name, value.number});
    return object;
}

} // namespace

Value heat_object(const BoreHeat& heat) {
    Value::Object object;
    if (heat.preheat.doubt)
        object.push_back({"doubt", *heat.preheat.doubt});
    put_preheat(object, heat.preheat);
    if (heat.bore)
        object.push_back({"heat_input_kj_mm", heat_input_object(heat)});
    if (heat.cooling) {
        object.push_back({"t85_s", heat.cooling->t85().value()});
        object.push_back({"t85_transition_mm", mm(heat.cooling->transition)});
    }
    object.push_back({"methods", Value(heat.preheat.methods | ranges::views::transform(method_object) |
                                       ranges::to<Value::List>())});
    object.push_back({"advice", Value(heat.preheat.advice | ranges::views::transform(advice_object) |
                                      ranges::to<Value::List>())});
    if (heat.preheat.post_heat) {
        object.push_back({"post_heat_degC", deg_c(heat.preheat.post_heat->temperature.value)});
        object.push_back({"post_heat_s", heat.preheat.post_heat->time.value()});
    }
    if (!heat.preheat.values.empty())
        object.push_back({"values", values_object(heat.preheat)});
    if (heat.hydrogen_ml_100g)
        object.push_back({"hydrogen_ml_100g", heat.hydrogen_ml_100g->value});
    if (heat.wall) {
        object.push_back({"wall_mm", mm(*heat.wall)});
        object.push_back({"measuring_distance_mm", mm(measuring_distance(*heat.wall))});
        object.push_back({"heated_zone_mm", mm(heated_zone(*heat.wall))});
        object.push_back({"equalising_s", equalising_time(*heat.wall).value()});
    }
    return object;
}

} // namespace ringfill
