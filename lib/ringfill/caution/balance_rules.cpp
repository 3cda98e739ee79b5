#include <ringfill/caution/balance_rules.hpp>

#include <cmath>

#include <fmt/format.h>

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

std::string with_plate(const HeatBalance& balance, const HeatRun& failed, UnitSystem units) {
    return balance.plated && &failed == &balance.plated->run
               ? fmt::format(" with a plate of {} on the boss, since the job does not say what stands on it",
                             show(balance.plated->plates.front(), units))
               : std::string();
}

Caution heater_too_small(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.cold().run;
    const Power needed = heater_needed(balance);
    const std::string why =
        needed < balance.heater.power
            ? fmt::format("of {:.3g} kW given off, {:.3g} kW only hold it: it would take more than ten days",
                          kilowatts(balance.heater.power), kilowatts(needed))
            : fmt::format("{:.3g} kW are given off, and more than {:.1f} kW are needed",
                          kilowatts(balance.heater.power), at_least_kilowatts(needed));
    return {bore.name,
            "before",
            "yes",
            fmt::format("Bring a larger heater or shelter the boss: this one does not bring it to {}. Its "
                        "fuel is left out of what to take, stops are counted as far as it goes.",
                        show_minimum(run.end_at, units)),
            fmt::format("{}{}, at {:.3g} % into the metal", why, with_plate(balance, run, units),
                        100 * balance.heater.efficiency),
            "own"};
}

Caution never_cools(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run.end == HeatEnd::never_cools ? balance.hot.run : balance.cold().run;
    return {bore.name,
            "before",
            "yes",
            fmt::format("Cool the air round the boss, or wait for a colder day: it does not come down to {}, "
                        "where the work may go on. Its fuel is left out of what to take, stops are counted "
                        "as far as it goes.",
                        show_maximum(run.end_at, units)),
            fmt::format("the air is at {}, or ten days are not enough", show(balance.ambient, units)),
            "own"};
}

Caution never_cold(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    const HeatRun& run = balance.hot.run.cooling_to_finish ? balance.cold().run : balance.hot.run;
    const HeatRunSettings& run_settings = balance.hot.settings;
    const bool roughs = run.cooling_to_rough.has_value();
    return {bore.name,
            "after",
            "yes",
            roughs ? fmt::format("Correct the finish diameter for the temperature, or finish and measure on "
                                 "a colder day: the boss does not cool to {}.",
                                 show_maximum(run_settings.finish_below, units))
                   : fmt::format("Do not bore yet: the boss does not cool to {}.",
                                 show_maximum(run_settings.rough_below, units)),
            fmt::format("the air is at {}, or ten days are not enough", show(balance.ambient, units)),
            "practice"};
}

Caution far_over(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    return {bore.name,
            "during",
            "yes",
            fmt::format(
                "Break within the ring, or lay it cooler: begun under the maximum, a ring still takes this "
                "boss to {}.",
                show(balance.ring_peak(), units)),
            fmt::format("no ring begins over {}, yet one ring warms the boss by more than is left to it",
                        show_maximum(balance.hot.settings.maximum, units)),
            "practice"};
}

} // namespace

std::vector<Caution> balance_cautions(const WornBore& bore, const HeatBalance& balance, UnitSystem units) {
    switch (end_of(balance)) {
    case BalanceEnd::heater_too_small:
        return {heater_too_small(bore, balance, units)};
    case BalanceEnd::never_cools:
        return {never_cools(bore, balance, units)};
    case BalanceEnd::never_cold:
        return {never_cold(bore, balance, units)};
    case BalanceEnd::done:
        break;
    }
    if (balance.ring_peak().value() > balance.hot.settings.maximum.value() + far_over_K)
        return {far_over(bore, balance, units)};
    return {};
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

} // namespace ringfill
