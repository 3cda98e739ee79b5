#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "advice.hpp"
#include "carbon_equivalent.hpp"
#include "tempered.hpp"

namespace ringfill::steel {
namespace {

/// The hottest hold that is one for hydrogen: trade goes to 600 °F (316 °C) for hours; over that the metal is
/// tempered. Common practice, no source.
constexpr double hottest_release_degC = 320;
constexpr double least_hours = 2;
constexpr double hours_per_mm = 1.0 / 25;
constexpr double from_ce_pct = 0.50;
constexpr double over_wall_mm = 30;
constexpr double unknown_wall_mm = 90;

double wall_of(const Asked& asked) {
    return asked.wall_mm.value_or(unknown_wall_mm);
}

/// Why hydrogen must be released, or nothing.
std::string why_release(const Asked& asked) {
    if (std::string why = why_not_usable(asked.base); !why.empty())
        return why;
    if (const double ce = settled(ce_iiw(asked.base)); ce >= from_ce_pct)
        return fmt::format("its CE(IIW) of {} % is not under {} %", show_pct(ce), show_pct(from_ce_pct));
    if (wall_of(asked) > over_wall_mm && asked.yield_MPa && *asked.yield_MPa > high_yield_MPa)
        return fmt::format("{} with a yield strength of {:.4g} MPa, over {} MPa",
                           asked.wall_mm
                               ? fmt::format("a wall of {:.4g} mm, over {} mm,", *asked.wall_mm, over_wall_mm)
                               : "a wall that is not known",
                           *asked.yield_MPa, high_yield_MPa);
    return {};
}

double least_hold_degC(const Asked& asked) {
    return std::max(release_degC, asked.preheat_degC.value_or(release_degC));
}

/// What a hold must not pass: the maximum a document gives for the rings, and what the tempering allows.
struct Ceiling {
    double degC = 1000;
    std::string words; ///< "the tempering at 400 °C (752 °F)"
};

Ceiling ceiling_of(const Asked& asked) {
    Ceiling ceiling;
    if (asked.tempering_degC)
        ceiling = {*asked.tempering_degC - under_tempering_K,
                   fmt::format("{} K under the tempering at {}", under_tempering_K,
                               show_both(*asked.tempering_degC))};
    if (asked.softens_degC && *asked.softens_degC < ceiling.degC)
        ceiling = {*asked.softens_degC,
                   fmt::format("{}, over which it softens", show_both(*asked.softens_degC))};
    if (asked.interpass_degC && *asked.interpass_degC < ceiling.degC)
        ceiling = {*asked.interpass_degC,
                   fmt::format("the interpass maximum of {}", show_both(*asked.interpass_degC))};
    return ceiling;
}

Figure temperature_value(const Asked& asked, double hold_degC) {
    Figure figure;
    figure.name = "post_heat_K";
    figure.number = hold_degC + ice_point_K;
    std::string formula = "250";
    if (asked.preheat_degC) {
        formula = "max(250, T_p)";
        figure.inputs.push_back({"T_p", *asked.preheat_degC, "°C"});
    }
    if (asked.interpass_degC) {
        formula = fmt::format("min({}, T_i)", formula);
        figure.inputs.push_back({"T_i", *asked.interpass_degC, "°C"});
    }
    if (asked.softens_degC) {
        formula = fmt::format("min({}, T_s)", formula);
        figure.inputs.push_back({"T_s", *asked.softens_degC, "°C"});
    }
    if (asked.tempering_degC) {
        formula = fmt::format("min({}, T - 50)", formula);
        figure.inputs.push_back({"T", *asked.tempering_degC, "°C"});
    }
    figure.formula = fmt::format("{} + 273.15", formula);
    figure.source = hold_degC == release_degC ? "EN1011-2-B" : "practice";
    if (hold_degC < least_hold_degC(asked))
        figure.note = fmt::format("kept to {}", ceiling_of(asked).words);
    else if (hold_degC > release_degC)
        figure.note = "no colder than the preheat";
    return figure;
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

/// Whether hydrogen must leave, or may have to because the strength is not known.
bool may_ask_for_release(const Asked& asked, const std::string& why) {
    return !why.empty() || (!asked.yield_MPa && wall_of(asked) > over_wall_mm);
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
    const Ceiling ceiling = ceiling_of(asked);
    if (ceiling.degC < std::max(least_release_degC, asked.preheat_degC.value_or(0))) {
        if (!why.empty())
            add(fmt::format(
                    "Take the hold after welding from the approved procedure: it must not pass {}, and "
                    "less would not release the hydrogen.",
                    ceiling.words),
                "practice");
        return told;
    }
    if (asked.preheat_degC && *asked.preheat_degC > hottest_release_degC) {
        if (may_ask_for_release(asked, why))
            add(fmt::format(
                    "Take what follows the last ring from the approved procedure, and keep it at its "
                    "preheat until then: a hold for hydrogen ends at about {}, and its preheat of {} is "
                    "over that.",
                    show_both(hottest_release_degC), show_at_least(*asked.preheat_degC)),
                "practice");
        return told;
    }
    const double hold_degC = std::min(least_hold_degC(asked), ceiling.degC);
    const double hours = std::max(least_hours, wall_of(asked) * hours_per_mm);
    const std::string hold =
        fmt::format("{} for {}", hold_degC > release_degC ? show_at_least(hold_degC) : show_both(hold_degC),
                    show_hours(hours));
    if (why.empty()) {
        if (may_ask_for_release(asked, why))
            add(fmt::format(
                    "If its yield strength, which is not known here, is over {} MPa, hold it at {} after "
                    "the last ring, before it cools.",
                    high_yield_MPa, hold),
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
