#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/caution/heat_rules.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A peak so far over the interpass maximum is told [K; common practice, no source].
constexpr double far_over_K = 25;

double kilowatts(Power power) {
    return power.value() / 1e3;
}

/// A power that must be had, rounded up.
double at_least_kilowatts(Power power) {
    return std::ceil(power.value() / 100 - 1e-9) / 10;
}

void judge_heater(CautionList& cautions, const HeatBalance& balance, UnitSystem units) {
    const Power given = balance.heater.power;
    const Power needed = heater_needed(balance);
    const std::string why =
        needed < given
            ? fmt::format("of {:.3g} kW given off, {:.3g} kW only hold it: it would take more than ten days",
                          kilowatts(given), kilowatts(needed))
            : fmt::format("{:.3g} kW are given off, and more than {:.1f} kW are needed", kilowatts(given),
                          at_least_kilowatts(needed));
    const std::string with_plate =
        balance.plated
            ? fmt::format(" with a plate of {} on the boss, since the job does not say what stands on it",
                          show(balance.plated->plates.front(), units))
            : std::string();
    cautions.before(
        fmt::format("Bring a larger heater or shelter the boss: this one does not bring it to {}. Its fuel "
                    "is left out of what to take, stops are counted as far as it goes.",
                    show_minimum(balance.cold().run.end_at, units)),
        fmt::format("{}{}, at {:.3g} % into the metal", why, with_plate, 100 * balance.heater.efficiency),
        "own");
}

std::string air_is_warm(const HeatBalance& balance, UnitSystem units) {
    return fmt::format("the air is at {}, or ten days are not enough", show(balance.ambient, units));
}

void judge_welding(CautionList& cautions, const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run.end == HeatEnd::never_cools ? balance.hot.run : balance.cold().run;
    cautions.add(
        When::before, Matter::schedule,
        fmt::format("Cool the air round the boss, or wait for a colder day: it does not come down to {}, "
                    "where the work may go on. Its fuel is left out of what to take, stops are counted as "
                    "far as it goes.",
                    show_maximum(run.end_at, units)),
        air_is_warm(balance, units), "own");
}

void judge_cooling(CautionList& cautions, const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run.cooling_to_finish ? balance.cold().run : balance.hot.run;
    const HeatRunSettings& settings = balance.hot.settings;
    cautions.add(When::after, Matter::quality,
                 run.cooling_to_rough
                     ? fmt::format("Correct the finish diameter for the temperature, or finish and measure "
                                   "on a colder day: the boss does not cool to {}.",
                                   show_maximum(settings.finish_below, units))
                     : fmt::format("Do not bore yet: the boss does not cool to {}.",
                                   show_maximum(settings.rough_below, units)),
                 air_is_warm(balance, units));
}

void judge_peak(CautionList& cautions, const HeatBalance& balance, UnitSystem units) {
    const Temperature maximum = balance.hot.settings.maximum;
    if (balance.ring_peak().value() > maximum.value() + far_over_K)
        cautions.add(
            When::during, Matter::cracking,
            fmt::format("Break within the ring, or lay it cooler: begun under the maximum, a ring still "
                        "takes this boss to {}.",
                        show(balance.ring_peak(), units)),
            fmt::format("no ring begins over {}, yet one ring warms the boss by more than is left to it",
                        show_maximum(maximum, units)));
}

const Temperature too_cold = celsius(-18);
const Temperature freezing = celsius(0);
const Temperature damp = celsius(5);
const Temperature warmed_to = celsius(20);

} // namespace

std::vector<Caution> balance_cautions(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    CautionList cautions(bore, Matter::cracking);
    switch (end_of(balance)) {
    case BalanceEnd::heater_too_small:
        judge_heater(cautions, balance, units);
        break;
    case BalanceEnd::never_cools:
        judge_welding(cautions, balance, units);
        break;
    case BalanceEnd::never_cold:
        judge_cooling(cautions, balance, units);
        break;
    case BalanceEnd::done:
        judge_peak(cautions, balance, units);
    }
    return cautions.all();
}

std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance,
                                       UnitSystem units) {
    if (!(balance.biot > thin_biot))
        return {};
    return {
        fmt::format("{}: its wall is not at one temperature (Biot number {:.2f} at {}, over {}): waits and "
                    "temperatures are means over the boss; measure before each ring.",
                    bore, balance.biot, show(balance.hot.settings.maximum, units), thin_biot)};
}

std::vector<Caution> cold_cautions(const Site& site, UnitSystem units,
                                   const std::vector<std::string>& in_doubt, bool all_in_doubt) {
    CautionList cautions(Matter::cracking);
    const bool wet = site.wet.value_or(false);
    const auto colder_than = [&](Temperature limit) { return site.ambient && *site.ambient < limit; };
    const std::string ambient =
        site.ambient ? fmt::format("the job says {} at the site", show(*site.ambient, units)) : "";
    const std::string but =
        in_doubt.empty() ? std::string()
                         : fmt::format(" Not {}: its metal is identified first.", fmt::join(in_doubt, ", "));
    if (colder_than(too_cold))
        cautions.before(
            fmt::format("Do not weld in this cold: put up a shelter and heat it first, until it is over {} "
                        "at the weld.",
                        show(too_cold, units)),
            ambient, "D1.1-ambient");
    if (colder_than(freezing) && !all_in_doubt)
        cautions.before(
            fmt::format("Warm every boss to {} at least before the first arc and hold it there, even where "
                        "no preheat is asked for.{}",
                        show_minimum(warmed_to, units), but),
            ambient, "D1.1-ambient");
    if ((wet || colder_than(damp)) && !all_in_doubt)
        cautions.before("Warm the metal until it is dry and hand-warm: damp steel cracks and makes pores." +
                            but,
                        wet ? "the job says it is wet" : ambient);
    return cautions.all();
}

} // namespace ringfill
