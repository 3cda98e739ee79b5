#include <ringfill/heat/approved.hpp>

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

} // namespace

void let_approved_rule(Preheat& preheat, const HeatCase& what, const Approved& approved) {
    preheat.approved = approved.reference;
    if (approved.preheat_min) {
        preheat.minimum = by_approved(*approved.preheat_min, approved);
        preheat.no_preheat = *approved.preheat_min <= chill_off;
        preheat.asked_without_figure = false;
        for (PreheatMethod& method : preheat.methods)
            method.rules = false;
    }
    if (approved.interpass_max)
        preheat.interpass_max = by_approved(*approved.interpass_max, approved);
    else if (approved.preheat_min)
        preheat.interpass_max = interpass_maximum(what, preheat.minimum, preheat.methods, preheat.values);
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        preheat.post_heat =
            PostHeat{by_approved(*approved.post_heat->temperature, approved), *approved.post_heat->time, {}};
    preheat.contradictory =
        preheat.minimum && preheat.interpass_max && preheat.minimum->value > preheat.interpass_max->value;
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
