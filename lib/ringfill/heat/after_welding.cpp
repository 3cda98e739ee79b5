#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/heat/hold.hpp>
#include <ringfill/heat/identity.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Heat treatment stays this far under the tempering [K; memory].
constexpr double treated_under_tempering_K = 20;

std::string shown_degC(double degC) {
    return fmt::format("{:.0f} °C ({:.0f} °F)", degC, degC * 1.8 + 32);
}

std::string treatment_text(const HeatTreatment& one, double wall_mm) {
    return fmt::format("{} ({}) {} to {} for {:.3g} h or more", one.document, one.edition,
                       shown_degC(one.degC.first), shown_degC(one.degC.second),
                       treatment_hold(one, wall_mm).value() / 3600);
}

void say_treatment(Preheat& preheat, const HeatCase& heat_case) {
    if (preheat.heat_treatment.empty())
        return;
    const double wall = heat_case.wall ? mm(*heat_case.wall) : 0;
    std::string text = fmt::format(
        "Not fit for service as welded: heat-treat it after welding, {}; bore it to size after that.",
        listed(preheat.heat_treatment, "; ",
               [&](const HeatTreatment& one) { return treatment_text(one, wall); }));
    if (heat_case.base->tempering)
        text += fmt::format(" Never over {}, {} K under its tempering.",
                            shown_degC(deg_c(heat_case.base->tempering->value) - treated_under_tempering_K),
                            treated_under_tempering_K);
    if (!heat_case.base->hold_is_ruled)
        text += " Never let it fall under its preheat until then, or hold it hot first.";
    preheat.advice.push_back({"post_heat", std::move(text), preheat.heat_treatment.back().source});
}

void say_cool_to(Preheat& preheat, const HeatCase& heat_case) {
    const auto& cool_to = heat_case.base->cool_to;
    if (!cool_to || heat_case.base->structure != "martensitic")
        return;
    const double low = deg_c(cool_to->value.first);
    const double high = deg_c(cool_to->value.second);
    preheat.advice.push_back(
        {"slow_cooling",
         low < 100 ? fmt::format("After the last ring let it cool under {} before it is heat-treated.",
                                 shown_degC(high))
                   : fmt::format(
                         "After the last ring let it cool under a dry blanket until it is between {} and {}, "
                         "no colder: only then is it hard through and ready to be tempered.",
                         shown_degC(low), shown_degC(high)),
         cool_to->source});
}

void say_cooling(Preheat& preheat, const HeatCase& heat_case) {
    if (heat_case.base->structure != "ferritic" || heat_case.base->hold_is_ruled)
        return;
    if (heat_case.is_quenched() || cools_in_the_open(*heat_case.base)) {
        preheat.advice.push_back(
            {"slow_cooling", "Let it cool in still air after the last ring, without a blanket.", "practice"});
        return;
    }
    const std::string cover =
        "Cover the part with a dry insulating blanket after the last ring and let it cool out "
        "of the draught";
    const auto& slow = preheat.slow_cooling;
    if (!slow)
        preheat.advice.push_back({"slow_cooling", cover + ".", "practice"});
    else
        preheat.advice.push_back({"slow_cooling",
                                  fmt::format("{}, no faster than {} K/h down to {}: {}.", cover,
                                              slow->K_per_h, shown_degC(deg_c(slow->down_to)), slow->why),
                                  slow->source});
}

void say_hold(Preheat& preheat) {
    const auto& hold = preheat.post_heat;
    if (!hold)
        return;
    preheat.advice.push_back(
        {"post_heat",
         fmt::format("After the last ring, before it falls under its preheat, hold it at {} for "
                     "{:.3g} h, so that hydrogen leaves: {}.",
                     shown_degC(deg_c(hold->temperature.value)), hold->time.value() / 3600,
                     hold->temperature.by),
         hold->temperature.source});
}

} // namespace

void advise_after_welding(Preheat& preheat, const HeatCase& heat_case) {
    preheat.heat_treatment = heat_treatment_after(heat_case);
    preheat.slow_cooling = slow_cooling(heat_case, preheat);
    if (preheat.slow_cooling) {
        AnsweredFigure rate;
        rate.name = "cooling_max_K_per_h";
        rate.number = preheat.slow_cooling->K_per_h;
        rate.source = preheat.slow_cooling->source;
        rate.note = preheat.slow_cooling->why;
        preheat.values.push_back(std::move(rate));
    }
    if (!preheat.post_heat)
        preheat.post_heat = hydrogen_hold(heat_case, preheat);
    say_cool_to(preheat, heat_case);
    say_cooling(preheat, heat_case);
    say_hold(preheat);
    say_treatment(preheat, heat_case);
}

} // namespace ringfill
