#include <algorithm>

#include <fmt/format.h>

#include <ringfill/caution/bore_rules.hpp>

namespace ringfill {
namespace {

constexpr double ten_kelvin = 10;

} // namespace

std::vector<Caution> boring_cautions(const WornBore& bore, const Build& build, const BoringPlan& boring,
                                     UnitSystem units) {
    CautionList cautions(bore, Matter::quality);
    if (boring.bar.too_fast)
        cautions.add(
            When::before, Matter::schedule,
            "Expect the bar to wear its edges out fast: its lowest speed is too fast for this bore.",
            fmt::format("{} cut at {}, asked is {}", show_turning(boring.bar.used),
                        show_cutting_speed(cutting_speed_at(boring.bar.used, bore.finish_diameter), units),
                        show_cutting_speed(boring.settings.cutting_speed.value, units)));
    if (boring.valley_radius >= boring.final_diameter / 2.0)
        cautions.before(
            "Weld another layer or leave more stock: the bore will not clean up at its finish size.",
            fmt::format("the floors of the valleys lie at up to {}, the finish is {}",
                        show(2.0 * boring.valley_radius, units), show(boring.final_diameter, units)));
    for (const GrooveCut& groove : boring.grooves)
        if (build.finished_weld > Length() && groove.weld_left >= Length() &&
            groove.weld_left < least_finished_weld)
            cautions.before("Expect the re-cut groove to run close to the fused line.",
                            fmt::format("only {} of weld is left under its floor at {}, under {}",
                                        show(groove.weld_left, units),
                                        show(bore.grooves[groove.groove].diameter, units),
                                        show(least_finished_weld, units)));
    return cautions.all();
}

std::vector<Caution> hot_finish_cautions(const std::vector<HotBore>& bores, const Cutting& cutting,
                                         UnitSystem units) {
    const auto per_kelvin = [](const HotBore& bore) {
        return bore.boring->expansion.value * bore.boring->final_diameter;
    };
    const auto most =
        std::max_element(bores.begin(), bores.end(), [&](const HotBore& one, const HotBore& other) {
            return per_kelvin(one) < per_kelvin(other);
        });
    CautionList cautions(Matter::quality);
    if (most != bores.end())
        cautions.add(
            When::after, Matter::quality,
            fmt::format(
                "Rough under {}; finish and measure under {}, or add the growth to the gauge reading.",
                show(cutting.rough_below.value, units), show(cutting.finish_below.value, units)),
            fmt::format("{} is {} large for each {}", most->name,
                        show_fine(ten_kelvin * per_kelvin(*most), units),
                        units == UnitSystem::metric ? "10 K over 20 °C" : "18 °F over 68 °F"),
            cutting.finish_below.source);
    return cautions.all();
}

} // namespace ringfill
