#include <cmath>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/listed.hpp>

namespace ringfill {
namespace {

/// A peak so far over the interpass maximum is told [K; common practice, no source].
constexpr double far_over_K = 25;

/// What the heat balance was tried on against a three-dimensional reference [section 9].
const Length tried_bore_from = millimetres(50);
const Length tried_bore_to = millimetres(160);
const Length tried_wall_from = millimetres(15);
const Length tried_wall_to = millimetres(190);

/// Two runs so far apart ask for the plates [own choice].
constexpr double wide_range = 1.5;

double kilowatts(Power power) {
    return power.value() / 1e3;
}

/// What the heater would have to give off, "more than 3.1 kW".
std::string needed_in_words(const HeatBalance& balance) {
    if (balance.cold().run.end == HeatEnd::heater_too_small && !balance.cold().run.needed)
        return "not even 64 times as much would be enough in two hours";
    return fmt::format("more than {:.1f} kW are needed",
                       std::ceil(kilowatts(heater_needed(balance)) * 10 - 1e-9) / 10);
}

void judge_heater(CautionList& cautions, const HeatBalance& balance) {
    std::string why = fmt::format("{:.3g} kW are given off, and {}", kilowatts(balance.heater.power),
                                  needed_in_words(balance));
    if (balance.plated)
        why += fmt::format(" with a plate of {} on the boss, since the job does not say what stands on it",
                           show(balance.plated->plates.front(), cautions.units));
    cautions.before_by("own",
                       "Bring a larger heater or shelter the boss: this one does not bring it to {} in time. "
                       "Its fuel is left out of what to take, rests are counted as far as it goes.",
                       "{1}, at {2:.3g} % into the metal",
                       show_minimum(balance.cold().run.end_at, cautions.units), why,
                       100 * balance.heater.efficiency);
}

/// Of a warm-up or a window that the boss cannot be brought into by heat from outside.
void judge_window(CautionList& cautions, const HeatBalance& balance, HeatEnd end) {
    const HeatRun& failed = balance.cold().is_whole() ? balance.hot.run : balance.cold().run;
    const std::string minimum = show_minimum(failed.end_at, cautions.units);
    if (end == HeatEnd::skin_in_the_way)
        cautions.before_by("own",
                           "Warm it for longer, wrap it meanwhile, or allow a hotter outside (heater.skin): "
                           "as it is the bore does not come to {} in six hours. Its fuel is left out of what "
                           "to take.",
                           "the outside is kept under {1}, and the bore is {2} then", minimum,
                           balance.cold().settings.skin, failed.warm_up.bore);
    else
        cautions.before_by("own",
                           "Put heat beside the plates: heat spread evenly does not hold the boss over {} "
                           "while it is welded. Its fuel is left out of what to take, rests are counted as "
                           "far as it goes.",
                           "its coldest place is not back over it in 30 min; {1}", minimum,
                           needed_in_words(balance));
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
    else if (end == HeatEnd::skin_in_the_way || end == HeatEnd::window_not_held)
        judge_window(cautions, balance, end);
    else if (end == HeatEnd::never_cools)
        cautions
            .add(When::before, Matter::schedule,
                 "Cool the air round the boss, or wait for a colder day: it does not come down to {1}, where "
                 "the work may go on. Its fuel is left out of what to take, rests are counted as far as it "
                 "goes.",
                 "the air is at {}, or ten days are not enough", balance.ambient,
                 most((hot.end == HeatEnd::never_cools ? hot : cold).end_at))
            .source = "own";
    else if (end == HeatEnd::never_cold)
        cautions.add(When::after, Matter::quality, "{1}: the boss does not cool to {2}.",
                     "the air is at {}, or ten days are not enough", balance.ambient, "Do not bore yet",
                     most(settings.rough_below));
    else if (balance.ring_peak().value() > settings.maximum.value() + far_over_K)
        cautions.add(When::during, Matter::cracking,
                     "Break within the ring, or lay it cooler: begun under the maximum, a ring still "
                     "takes this boss to {}.",
                     "no ring begins over {1}, yet one ring warms the boss by more than is left to it",
                     balance.ring_peak(), most(settings.maximum));
}

std::vector<std::string> balance_notes(const std::string& bore, const HeatBalance& balance,
                                       UnitSystem units) {
    std::vector<std::string> notes;
    const BossShape& boss = balance.hot.settings.boss;
    const Length diameter = 2.0 * boss.bore_radius;
    const Length wall = boss.outer_radius - boss.bore_radius;
    if (diameter < tried_bore_from || diameter > tried_bore_to || wall < tried_wall_from ||
        wall > tried_wall_to)
        notes.push_back(fmt::format("{}: a bore of {} in a wall of {} lies outside what its heat balance was "
                                    "tried on (bores of {} to "
                                    "{}, walls of {} to {}): measure before each ring.",
                                    bore, show(diameter, units), show(wall, units),
                                    show(tried_bore_from, units), show(tried_bore_to, units),
                                    show(tried_wall_from, units), show(tried_wall_to, units)));
    if (balance.plated && balance.cold().is_whole() && balance.hot.is_whole() &&
        balance.cold().run.warm_up_heat > wide_range * balance.hot.run.warm_up_heat)
        notes.push_back(fmt::format(
            "{}: say first what plates stand on the boss (attached): its warm-up takes "
            "{:.3g} to {:.3g} MJ.",
            bore, balance.hot.run.warm_up_heat.value() / 1e6, balance.cold().run.warm_up_heat.value() / 1e6));
    if (balance.hot.run.stitches > 0 && balance.hot.settings.part < balance.hot.run.boss)
        notes.push_back(
            fmt::format("{}: write the mass of the whole casting into part_mass: the waits here are "
                        "those of the boss alone, the longest.",
                        bore));
    const Time more = balance.hot.run.told_pausing - balance.hot.run.pausing;
    if (more >= in_si<Time>(60))
        notes.push_back(fmt::format("{}: the dwells told are {} longer in all than the boss needs, since a "
                                    "torch is set to few of them.",
                                    bore, show(more)));
    return notes;
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
