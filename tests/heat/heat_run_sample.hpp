#pragma once

#include <algorithm>
#include <vector>

#include <ringfill/heat/heat_run.hpp>

#include "heat/boss_cases.hpp"

namespace ringfill::testing {

/// A boss of 180 mm with a bore of 95, held between 260 and 350 °C.
inline HeatRunSettings usual() {
    HeatRunSettings settings;
    settings.boss = shape_of(180, 95, 100, 4.3);
    settings.metal = plain_steel();
    settings.ambient = celsius(4);
    settings.minimum = celsius(260);
    settings.maximum = celsius(350);
    settings.arc = in_si<Power>(2220);
    settings.heater = in_si<Power>(7500);
    settings.skin = settings.maximum;
    settings.start_delay = in_si<Time>(120);
    settings.step_over = in_si<Time>(12);
    settings.cleaning = in_si<Time>(240);
    settings.blanket = millimetres(25);
    settings.rough_below = celsius(60);
    settings.finish_below = celsius(30);
    return settings;
}

inline HeatRunSettings with_plate(double thickness_mm = 30) {
    HeatRunSettings settings = usual();
    const Length plate = millimetres(thickness_mm);
    settings.boss.plates = {{plate, millimetres(50), usual_reach(plate)}};
    return settings;
}

inline std::vector<RingPass> layers(int count, std::size_t rings, double seconds) {
    std::vector<RingPass> passes;
    for (int layer = 1; layer <= count; ++layer)
        passes.push_back(
            {"bore", layer, std::vector<Time>(rings, in_si<Time>(seconds)), Length(), millimetres(100)});
    return passes;
}

inline int count_of(const HeatRun& run, HeatStage stage) {
    return static_cast<int>(std::count_if(run.steps.begin(), run.steps.end(),
                                          [&](const HeatStep& step) { return step.stage == stage; }));
}

inline double gap_after(const HeatRun& run, std::size_t ring) {
    return (run.arcs[ring + 1].first - run.arcs[ring].second).value();
}

} // namespace ringfill::testing
