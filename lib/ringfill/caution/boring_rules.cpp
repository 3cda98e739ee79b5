#include <functional>

#include <range/v3/algorithm/max_element.hpp>

#include <ringfill/caution/rules.hpp>

namespace ringfill {

void boring_rules(CautionList& cautions, const RuledBore& on) {
    const auto& [bore, settings, plan, units] = on;
    const BoringPlan& boring = plan.boring;
    const BarSettings& bar = boring.settings;
    if (const auto& hard = bar.deposit.too_hard)
        cautions.before_by(bar.bored_up_to_HV.source,
                           "Grind the weld to size: it is too hard to be bored on a bar. Cuts and times here "
                           "are those of boring.",
                           "{} lays about {} HV, over {} HV, 45 HRC", plan.filler, hard->value,
                           bar.bored_up_to_HV.value);
    if (bar.cuts_to_the_end() && bar.feed.value < bar.least_feed.value)
        cautions.before_by(
            bar.least_feed.source,
            "Feed at least {}: the edge of a finer feed rubs in the skin that it has hardened.",
            "the weld is a {1} and the feed {2}", show_pitch(bar.least_feed.value, units),
            words_for(bar.deposit.group), show_pitch(bar.feed.value, units));
    if (boring.bar.too_fast)
        cautions.add(When::before, Matter::schedule,
                     "Expect the bar to wear its edges out fast: its lowest speed is too fast for this bore.",
                     "{} cut at {}, asked is {}", show_turning(boring.bar.used),
                     show_cutting_speed(cutting_speed_at(boring.bar.used, bore.finish_diameter), units),
                     show_cutting_speed(boring.settings.cutting_speed.value, units));
    if (boring.valley_radius >= boring.final_diameter / 2.0)
        cautions.before(
            "Weld another layer or leave more stock: the bore will not clean up at its finish size.",
            "the floors of the valleys lie at up to {}, the finish is {}", 2.0 * boring.valley_radius,
            boring.final_diameter);
    for (const GrooveCut& groove : boring.grooves)
        if (plan.build.finished_weld > Length() && groove.weld_left >= Length() &&
            groove.weld_left < least_finished_weld)
            cautions.before("Expect the re-cut groove to run close to the fused line.",
                            "only {} of weld is left under its floor at {}, under {}", groove.weld_left,
                            bore.grooves[groove.groove].diameter, least_finished_weld);
}

void hot_finish_rules(CautionList& cautions, const std::vector<BorePlan>& bores, const Cutting& cutting) {
    static constexpr double ten_kelvin = 10;
    const auto growth = [](const BorePlan& bore) {
        return ten_kelvin * (bore.boring.expansion.value * bore.boring.final_diameter);
    };
    if (bores.empty())
        return;
    const auto most = ranges::max_element(bores, std::less<>(), growth);
    const bool metric = cautions.units == UnitSystem::metric;
    cautions
        .add(When::after, Matter::quality,
             "Rough under {}; finish and measure under {}, or add the growth to the gauge reading.",
             "{2} is {3} large for each {4}", cutting.rough_below.value, cutting.finish_below.value,
             most->name, show_fine(growth(*most), cautions.units),
             metric ? "10 K over 20 °C" : "18 °F over 68 °F")
        .source = cutting.finish_below.source;
}

} // namespace ringfill
