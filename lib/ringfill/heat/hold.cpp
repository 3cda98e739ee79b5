#include <ringfill/heat/hold.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/maximum_between_rings.hpp>
#include <ringfill/heat/shown_temperature.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double high_yield_MPa = 460;
constexpr double rigid_mm = 30;
constexpr double high_ce_pct = 0.50;
constexpr double over_mm = 13;
constexpr double release_degC = 250;
constexpr double plate_release_degC = 200;
constexpr double least_h = 2;
constexpr double mm_per_h = 25;
constexpr double unknown_wall_mm = 90;

double wall_mm(const HeatCase& heat_case) {
    return heat_case.wall ? mm(*heat_case.wall) : unknown_wall_mm;
}

/// Whether the wall is over a limit, which includes its last digit.
bool is_over(double wall, double limit_mm) {
    return wall > limit_mm * (1 + 1e-9);
}

/// Why hydrogen must be let out, and who says so.
struct Reason {
    std::string why; ///< the end of a sentence; empty: nothing asks for it
    std::string source;
};

Reason reason_for_hold(const HeatCase& heat_case, const Preheat& preheat) {
    const double wall = wall_mm(heat_case);
    const auto& yield = heat_case.base->yield_MPa;
    if (yield && yield->value > high_yield_MPa && is_over(wall, rigid_mm))
        return {
            fmt::format("a wall of {:.4g} mm, over {} mm, with a yield strength of {:.4g} MPa, over {} MPa",
                        wall, rigid_mm, yield->value, high_yield_MPa),
            "EN1011-2-B"};
    const auto ce = ranges::find(preheat.values, "CE_IIW_pct", &AnsweredFigure::name);
    if (heat_case.is_hardenable() && is_over(wall, over_mm) && ce != preheat.values.end() &&
        ce->number >= high_ce_pct - 1e-9)
        return {fmt::format("its CE(IIW) of {:.4g} % is not under {:.2f} %, over {} mm", ce->number,
                            high_ce_pct, over_mm),
                "practice"};
    if (ranges::any_of(preheat.methods, [](const PreheatMethod& method) {
            return method.applies && method.as_hot_as_it_bears;
        }))
        return {"its preheat is only as hot as the plate allows", "practice"};
    return {};
}

bool may_be_held(const HeatCase& heat_case) {
    const Base& base = *heat_case.base;
    return (base.structure == "ferritic" || base.structure == "martensitic") && !base.hold_is_ruled &&
           !heat_case.as_quenched;
}

/// What a hold must not pass.
std::optional<AskedTemperature> hold_ceiling(const HeatCase& heat_case, const Preheat& preheat) {
    auto ceiling = softens_over(heat_case);
    if (heat_case.is_quenched() && preheat.interpass_max &&
        (!ceiling || preheat.interpass_max->value < ceiling->value))
        ceiling = preheat.interpass_max;
    return ceiling;
}

AnsweredFigure hold_time(const HeatCase& heat_case, const std::string& source) {
    const double wall = wall_mm(heat_case);
    AnsweredFigure time;
    time.name = "post_heat_s";
    time.number = 3600 * std::max(least_h, wall / mm_per_h);
    time.formula = "3600*max(2, d/25)";
    time.inputs = {{"d", wall, "mm"}};
    time.source = wall > least_h * mm_per_h ? "practice" : source;
    if (!heat_case.wall)
        time.note = fmt::format("the wall is not known, taken as {} mm", unknown_wall_mm);
    return time;
}

bool is_warm_iron(const HeatCase& heat_case, const Preheat& preheat) {
    return heat_case.base->structure == "cast_iron" && preheat.minimum && preheat.minimum->value > chill_off;
}

} // namespace

std::optional<PostHeat> hydrogen_hold(const HeatCase& heat_case, const Preheat& preheat) {
    if (!may_be_held(heat_case))
        return std::nullopt;
    const Reason reason = reason_for_hold(heat_case, preheat);
    if (reason.why.empty())
        return std::nullopt;
    const UnitSystem units = heat_case.rules.units;
    const double usual = heat_case.is_quenched() ? plate_release_degC : release_degC;
    const Temperature least = preheat.least().value_or(chill_off);
    PostHeat hold;
    hold.temperature.value = std::max(printed_minimum(celsius(usual), usual, {}, units).value, least);
    hold.temperature.by = reason.why;
    hold.temperature.source = reason.source;
    if (const auto ceiling = hold_ceiling(heat_case, preheat);
        ceiling && ceiling->value < hold.temperature.value) {
        hold.temperature.value = std::max(ceiling->value, least);
        hold.temperature.by += ", kept to " + ceiling->by;
    }
    hold.time_working = hold_time(heat_case, reason.source);
    hold.time = in_si<Time>(hold.time_working.number);
    return hold;
}

std::optional<CoolingRate> slow_cooling(const HeatCase& heat_case, const Preheat& preheat) {
    constexpr double medium_carbon_pct = 0.40;
    constexpr double thick_mm = 25;
    const Base& base = *heat_case.base;
    if (is_warm_iron(heat_case, preheat))
        return CoolingRate{40, celsius(150), "iron that was welded warm or hot cracks in fast cooling",
                           "cast-iron-practice"};
    if (base.structure == "martensitic" && base.cool_to && deg_c(base.cool_to->value.first) >= 100)
        return CoolingRate{50, base.cool_to->value.second, "it hardens in air", base.cool_to->source};
    const double carbon = share_of(heat_case.composition, "C");
    if (base.structure == "ferritic" && !heat_case.is_quenched() && carbon > medium_carbon_pct &&
        is_over(wall_mm(heat_case), thick_mm))
        return CoolingRate{50, celsius(100),
                           fmt::format("its C of {:.4g} % is over {:.2f} %, and its wall over {} mm", carbon,
                                       medium_carbon_pct, thick_mm),
                           "practice"};
    return std::nullopt;
}

Time treatment_hold(const HeatTreatment& treatment, double wall_mm) {
    return in_si<Time>(60 * std::max(treatment.at_least_min, treatment.min_per_25mm * wall_mm / mm_per_h));
}

std::vector<HeatTreatment> heat_treatment_after(const HeatCase& heat_case) {
    std::vector<HeatTreatment> asked;
    for (const HeatTreatment& one : heat_case.base->heat_treatment)
        if (!heat_case.wall || is_over(mm(*heat_case.wall), one.over_mm))
            asked.push_back(one);
    return asked;
}

} // namespace ringfill
