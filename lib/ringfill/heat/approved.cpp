#include <ringfill/heat/approved.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/heat/interpass.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A band of 0.90 kJ/mm includes 0.90 as laid, whose last digit may differ.
constexpr double rounding = 1e-9;

AskedTemperature by_approved(Temperature value, const Approved& approved) {
    return {value,
            fmt::format("the approved procedure {}", approved.reference),
            "approved",
            "T_approved - 273.15",
            {{"T_approved", value.value(), "K"}}};
}

bool asks_for_preheat(const PreheatMethod& method) {
    return method.applies && method.minimum && *method.minimum > chill_off;
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
    preheat.no_preheat = asked.value <= chill_off && !preheat.asked_without_figure &&
                         std::none_of(preheat.methods.begin(), preheat.methods.end(), asks_for_preheat);
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

std::vector<Fault> band_faults(const std::string& bore, const Procedure& procedure,
                               const std::vector<LaidHeat>& laid) {
    std::vector<Fault> faults;
    if (!procedure.approved || !procedure.approved->heat_input)
        return faults;
    const auto& [lowest, highest] = *procedure.approved->heat_input;
    for (const LaidHeat& one : laid)
        if (one.heat_input < lowest * (1 - rounding) || one.heat_input > highest * (1 + rounding))
            faults.push_back(fault_at_path(
                procedure.path + ".approved.heat_input",
                fmt::format("{:.3g} to {:.3g} kJ/mm", kj_mm(lowest), kj_mm(highest)),
                fmt::format("does not hold the {:.3g} kJ/mm that the {} of {} is laid with",
                            kj_mm(one.heat_input), one.pass, printable(bore, 60)),
                "change wire feed, current, voltage or travel, or take the procedure that fits"));
    return faults;
}

} // namespace ringfill
