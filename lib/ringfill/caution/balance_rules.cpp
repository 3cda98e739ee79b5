#include <cmath>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

/// A peak so far over the interpass maximum is told [K; common practice, no source].
constexpr double far_over_K = 25;

double kilowatts(Power power) {
    return power.value() / 1e3;
}

void judge_heater(CautionList& cautions, const HeatBalance& balance) {
    const Power given = balance.heater.power;
    const Power needed = heater_needed(balance);
    const double rounded_up = std::ceil(needed.value() / 100 - 1e-9) / 10;
    std::string why =
        needed < given
            ? fmt::format("of {:.3g} kW given off, {:.3g} kW only hold it: it would take more than ten days",
                          kilowatts(given), kilowatts(needed))
            : fmt::format("{:.3g} kW are given off, and more than {:.1f} kW are needed", kilowatts(given),
                          rounded_up);
    if (balance.plated)
        why += fmt::format(" with a plate of {} on the boss, since the job does not say what stands on it",
                           show(balance.plated->plates.front(), cautions.units));
    cautions.before_by("own",
                       "Bring a larger heater or shelter the boss: this one does not bring it to {}. Its "
                       "fuel is left out of what to take, stops are counted as far as it goes.",
                       "{1}, at {2:.3g} % into the metal",
                       show_minimum(balance.cold().run.end_at, cautions.units), why,
                       100 * balance.heater.efficiency);
}

} // namespace

void balance_rules(CautionList& cautions, const RuledBore& on) {
    if (!on.plan.heat_balance)
        return;
    const HeatBalance& balance = *on.plan.heat_balance;
    const HeatRun& hot = balance.hot.run;
    const HeatRun& cold = balance.cold().run;
    const HeatRunSettings& settings = balance.hot.settings;
    const auto most = [&](Temperature maximum) { return show_exact(maximum, on.units); };
    const HeatEnd end = end_of(balance);
    if (end == HeatEnd::heater_too_small)
        judge_heater(cautions, balance);
    else if (end == HeatEnd::never_cools)
        cautions
            .add(When::before, Matter::schedule,
                 "Cool the air round the boss, or wait for a colder day: it does not come down to {1}, where "
                 "the work may go on. Its fuel is left out of what to take, stops are counted as far as it "
                 "goes.",
                 "the air is at {}, or ten days are not enough", balance.ambient,
                 most((hot.end == HeatEnd::never_cools ? hot : cold).end_at))
            .source = "own";
    else if (end == HeatEnd::never_cold) {
        const bool may_rough = (hot.cooling_to_finish ? cold : hot).cooling_to_rough.has_value();
        cautions.add(
            When::after, Matter::quality, "{1}: the boss does not cool to {2}.",
            "the air is at {}, or ten days are not enough", balance.ambient,
            may_rough
                ? "Correct the finish diameter for the temperature, or finish and measure on a colder day"
                : "Do not bore yet",
            most(may_rough ? settings.finish_below : settings.rough_below));
    } else if (balance.ring_peak().value() > settings.maximum.value() + far_over_K)
        cautions.add(When::during, Matter::cracking,
                     "Break within the ring, or lay it cooler: begun under the maximum, a ring still "
                     "takes this boss to {}.",
                     "no ring begins over {1}, yet one ring warms the boss by more than is left to it",
                     balance.ring_peak(), most(settings.maximum));
}

std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance,
                                       UnitSystem units) {
    if (!(balance.biot > thin_biot))
        return {};
    return {fmt::format("{}: its wall is not at one temperature (Biot number {:.2f} at {}, over {}): waits "
                        "and temperatures are means over the boss; measure before each ring.",
                        bore, balance.biot, show(balance.hot.settings.maximum, units), thin_biot)};
}

void cold_rules(CautionList& cautions, const Site& site, const std::vector<std::string>& in_doubt,
                bool all_in_doubt) {
    const bool wet = site.wet.value_or(false);
    const auto colder_than = [&](double limit) { return site.ambient && *site.ambient < celsius(limit); };
    const std::string ambient =
        site.ambient ? fmt::format("the job says {} at the site", show(*site.ambient, cautions.units)) : "";
    const std::string but =
        in_doubt.empty() ? ""
                         : fmt::format(" Not {}: its metal is identified first.", listed(in_doubt, ", "));
    if (colder_than(-18))
        cautions.before_by(
            "D1.1-ambient",
            "Do not weld in this cold: put up a shelter and heat it first, until it is over {} at the weld.",
            "{1}", celsius(-18), ambient);
    if (colder_than(0) && !all_in_doubt)
        cautions.before_by("D1.1-ambient",
                           "Warm every boss to {} at least before the first arc and hold it there, even "
                           "where no preheat is asked for.{}",
                           "{2}", show_minimum(celsius(20), cautions.units), but, ambient);
    if ((wet || colder_than(5)) && !all_in_doubt)
        cautions.before("Warm the metal until it is dry and hand-warm: damp steel cracks and makes pores.{}",
                        "{1}", but, wet ? "the job says it is wet" : ambient);
}

} // namespace ringfill
