#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "advice.hpp"
#include "carbon_equivalent.hpp"
#include "tempered.hpp"

namespace ringfill::steel {
namespace {

constexpr double release_degC = 250;
constexpr double least_hours = 2;
constexpr double hours_per_mm = 1.0 / 25;
constexpr double from_ce_pct = 0.50;
constexpr double over_wall_mm = 30;
constexpr double over_yield_MPa = 460;
constexpr double unknown_wall_mm = 90;
constexpr double ice_point_K = 273.15;

double wall_of(const Asked& asked) {
    return asked.wall_mm.value_or(unknown_wall_mm);
}

/// Why hydrogen must be released, or nothing.
std::string why_release(const Asked& asked) {
    if (std::string why = why_not_usable(asked.base); !why.empty())
        return why;
    if (const double ce = settled(ce_iiw(asked.base)); ce >= from_ce_pct)
        return fmt::format("its CE(IIW) of {} % is not under {} %", show_pct(ce), show_pct(from_ce_pct));
    if (wall_of(asked) > over_wall_mm && asked.yield_MPa && *asked.yield_MPa > over_yield_MPa)
        return fmt::format("{} with a yield strength of {:.4g} MPa, over {} MPa",
                           asked.wall_mm
                               ? fmt::format("a wall of {:.4g} mm, over {} mm,", *asked.wall_mm, over_wall_mm)
                               : "a wall that is not known",
                           *asked.yield_MPa, over_yield_MPa);
    return {};
}

Figure temperature_value(const Asked& asked, double hold_degC) {
    Figure figure;
    figure.name = "post_heat_K";
    figure.number = hold_degC + ice_point_K;
    const std::string wanted = asked.preheat_degC ? "max(250, T_p)" : "250";
    figure.formula = asked.tempering_degC ? fmt::format("min({}, T - 50) + 273.15", wanted)
                                          : fmt::format("{} + 273.15", wanted);
    if (asked.preheat_degC)
        figure.inputs.push_back({"T_p", *asked.preheat_degC, "°C"});
    if (asked.tempering_degC)
        figure.inputs.push_back({"T", *asked.tempering_degC, "°C"});
    figure.source = hold_degC == release_degC ? "EN1011-2-B" : "practice";
    if (hold_degC < release_degC)
        figure.note = fmt::format("kept {} K under the tempering at {}", under_tempering_K,
                                  show_both(*asked.tempering_degC));
    if (hold_degC > release_degC)
        figure.note = "no colder than the preheat";
    return figure;
}

double least_hold_degC(const Asked& asked) {
    return std::max(release_degC, asked.preheat_degC.value_or(release_degC));
}

double most_hold_degC(const Asked& asked) {
    constexpr double never_reached = 1000;
    return asked.tempering_degC.value_or(never_reached) - under_tempering_K;
}

Figure time_value(const Asked& asked, double hours) {
    Figure figure;
    figure.name = "post_heat_s";
    figure.number = hours * 3600;
    figure.formula = "3600*max(2, d/25)";
    figure.inputs = {{"d", wall_of(asked), "mm"}};
    figure.source = hours > least_hours ? "practice" : "EN1011-2-B";
    if (!asked.wall_mm)
        figure.note = fmt::format("the wall is not known, taken as {} mm", unknown_wall_mm);
    return figure;
}

/// Tenths of an hour, rounded up.
std::string show_hours(double hours) {
    return fmt::format("{:.4g} h", std::ceil(settled(hours * 10)) / 10);
}

} // namespace

Advised post_heat(const Asked& asked) {
    Advised told;
    const auto add = [&](std::string text, std::string source) {
        told.advice.push_back({"post_heat", std::move(text), std::move(source)});
    };
    const std::string why = why_release(asked);
    if (tempered_low(asked)) {
        add(fmt::format("Do not hold it hot to release hydrogen without the approved procedure: {}.",
                        why_tempered_low(asked)),
            "practice");
        return told;
    }
    if (asked.preheat_degC && *asked.preheat_degC > most_hold_degC(asked)) {
        add(fmt::format("Take the hold after welding from the approved procedure: its preheat of {} is itself "
                        "within {} K of the tempering at {}.",
                        show_at_least(*asked.preheat_degC), under_tempering_K, show_both(*asked.tempering_degC)),
            "practice");
        return told;
    }
    const double hold_degC = std::min(least_hold_degC(asked), most_hold_degC(asked));
    const double hours = std::max(least_hours, wall_of(asked) * hours_per_mm);
    const std::string hold =
        fmt::format("{} for {}", hold_degC > release_degC ? show_at_least(hold_degC) : show_both(hold_degC),
                    show_hours(hours));
    if (why.empty()) {
        if (!asked.yield_MPa && wall_of(asked) > over_wall_mm)
            add(fmt::format(
                    "If its yield strength, which is not known here, is over {} MPa, hold it at {} after "
                    "the last ring, before it cools.",
                    over_yield_MPa, hold),
                "EN1011-2-B");
        return told;
    }
    told.values = {temperature_value(asked, hold_degC), time_value(asked, hours)};
    add(fmt::format("After the last ring, before it cools, hold it at {}, so that hydrogen leaves: {}.", hold,
                    why),
        told.values.front().source);
    add("Keep it at least at its preheat until that hold begins.", "D10.10");
    return told;
}

} // namespace ringfill::steel
