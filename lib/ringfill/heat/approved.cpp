#include <ringfill/heat/preheat_methods.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

AskedTemperature by_approved(Temperature value, const Approved& approved) {
    return {value,
            fmt::format("the approved procedure {}", approved.reference),
            "approved",
            "T_approved - 273.15",
            {{"T_approved", value.value(), "K"}}};
}

/// What an approved maximum is held against: a document's, else what the tempering allows, else the highest
/// that common practice goes to.
AskedTemperature firm_maximum(const Preheat& preheat, const HeatCase& what) {
    if (preheat.interpass_max && !preheat.interpass_max->is_usual)
        return *preheat.interpass_max;
    if (auto tempered = softens_over(what))
        return *tempered;
    return {usual_maximum, "common practice", "practice"};
}

void hold_as_approved(Preheat& preheat, const HeatCase& what, PostHeat hold) {
    const Temperature at = hold.temperature.value;
    if (auto most = softens_over(what); most && at > most->value)
        preheat.overruled.hold_most = std::move(most);
    if (preheat.post_heat &&
        (preheat.post_heat->temperature.value > at || preheat.post_heat->time > hold.time))
        preheat.overruled.post_heat = preheat.post_heat;
    preheat.post_heat = std::move(hold);
}

} // namespace

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

void let_approved_rest_rule(Preheat& preheat, const HeatCase& what, const Approved& approved) {
    if (auto most = softens_over(what); most && approved.preheat_min && *approved.preheat_min > most->value)
        preheat.overruled.preheat_most = std::move(most);
    if (approved.interpass_max) {
        AskedTemperature asked = by_approved(*approved.interpass_max, approved);
        if (auto firm = firm_maximum(preheat, what); firm.value < asked.value)
            preheat.overruled.interpass_max = std::move(firm);
        preheat.interpass_max = std::move(asked);
    }
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        hold_as_approved(
            preheat, what,
            {by_approved(*approved.post_heat->temperature, approved), *approved.post_heat->time, {}, true});
}

} // namespace ringfill
