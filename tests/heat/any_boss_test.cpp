// Bosses drawn far beyond what is welded: each is followed to an end that has a name, or refused beforehand
// with a reason. By hand in any number, which also tells how they ended:
//   RINGFILL_BOSSES=10000 build/release/tests/heat_tests "[bosses]"
#include <cmath>
#include <cstdlib>
#include <iostream>
#include <map>
#include <numbers>

#include <catch2/catch.hpp>

#include "heat/known_balance.hpp"
#include "identity/draw.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr int usual_number = 300;

/// From low to high, as many in each decade.
double spread(Draw& draw, double low, double high) {
    return low * std::pow(high / low, draw.share());
}

void draw_shape(Known& known, Draw& draw) {
    WornBore& bore = known.bore;
    known.build.skim_radius = millimetres(spread(draw, 8, 250));
    known.build.wall = millimetres(spread(draw, 1.5, 500));
    bore.boss_diameter = 2.0 * (known.build.skim_radius + *known.build.wall);
    bore.length = millimetres(spread(draw, 4, 400));
    known.pitch = millimetres(draw.size(1.5, 12));
    bore.attached.clear();
    bore.carry_off.reset();
    if (draw.chance(30))
        bore.carry_off = in_si<Conductance>(draw.size(0, 60));
    for (int i = draw.whole(0, 3); i > 0; --i) {
        Plate plate{std::min(millimetres(spread(draw, 2, 120)), bore.length)};
        if (draw.chance(50))
            plate.depth = draw.share() * bore.length;
        if (draw.chance(50))
            plate.reach = millimetres(spread(draw, 30, 3000));
        plate.wrapped = draw.chance(20);
        bore.attached.push_back(plate);
    }
}

void draw_limits(Known& known, Draw& draw) {
    Preheat& preheat = known.heat.preheat;
    known.ambient = celsius(draw.size(-40, 45));
    preheat.minimum->value = celsius(draw.size(-20, 450));
    preheat.interpass_max->value = in_si<Temperature>(preheat.minimum->value.value() + draw.size(5, 300));
    if (draw.chance(20))
        preheat.later = LaterLayers{*preheat.minimum, *preheat.interpass_max};
    if (draw.chance(30))
        preheat.values.push_back({"cooling_max_K_per_h", draw.size(5, 200), "", {}, "", ""});
    if (draw.chance(30)) {
        PostHeat hold;
        hold.temperature.value = celsius(draw.size(100, 650));
        hold.time = in_si<Time>(draw.size(60, 14'400));
        preheat.post_heat = hold;
    }
}

void draw_metal(Known& known, Draw& draw) {
    if (!draw.chance(30))
        return;
    known.base.specific_heat = {in_si<SpecificHeat>(draw.size(380, 600)), "practice"};
    known.base.conductivity = {in_si<Conductivity>(draw.size(12, 120)), "practice"};
    if (draw.chance(50)) {
        known.heat.structure = "cast_iron";
        known.heat.cold_iron = draw.chance(50);
        known.bore.part_mass = in_si<Mass>(spread(draw, 1, 2000));
    }
}

void draw_work(Known& known, Draw& draw) {
    known.heat.voltage = in_si<Voltage>(draw.size(10, 40));
    known.heat.current = in_si<Current>(draw.size(30, 500));
    known.heater->power = in_si<Power>(spread(draw, 300, 200'000));
    known.heater->stays = draw.chance(40);
    known.heater->start_delay = in_si<Time>(draw.chance(50) ? 120 : draw.size(0, 1800));
    if (draw.chance(30))
        known.heater->skin =
            in_si<Temperature>(known.heat.preheat.minimum->value.value() + draw.size(0, 300));
    known.step_over = in_si<Time>(draw.size(0, 60));
    known.cleaning = in_si<Time>(draw.size(0, 900));
    known.blanket = millimetres(draw.size(2, 100));
    const double rings = std::ceil(known.bore.length / known.pitch);
    const Time arc = 2 * std::numbers::pi * known.build.skim_radius / in_si<Speed>(spread(draw, 1e-3, 15e-3));
    known.passes.clear();
    const bool is_helix = draw.chance(20);
    for (int layer = draw.whole(1, 3); layer > 0; --layer)
        known.passes.push_back({"bore", static_cast<int>(known.passes.size()) + 1,
                                std::vector<Time>(static_cast<std::size_t>(rings), arc), Length(),
                                known.bore.length, true, is_helix});
}

Known any_boss(const Known& sample, std::uint64_t seed) {
    Draw draw(seed);
    Known known = sample;
    draw_shape(known, draw);
    draw_limits(known, draw);
    draw_metal(known, draw);
    draw_work(known, draw);
    return known;
}

/// What is wrong with a run; empty: nothing.
std::string wrong_with(const HeatRun& run, const Known& known) {
    for (const double figure : {run.peak.value(), run.ring_peak.value(), run.stored.value(), run.lost.value(),
                                run.arc_heat.value(), run.told_pausing.value()})
        if (!std::isfinite(figure))
            return "a figure that is no number";
    if (run.warm_up.heat > Energy() && !run.warm_up.is_ready)
        return {}; // it breaks off before the first ring
    // What the arc and the heater gave is in the metal or gone.
    const double given = (run.warm_up_heat + run.reheat_heat + run.arc_heat).value();
    if (std::abs((run.stored + run.lost).value() - given) > 1e-3 * given)
        return fmt::format("{:.6g} J given, {:.6g} J stored, {:.6g} J lost", given, run.stored.value(),
                           run.lost.value());
    std::size_t rings = 0;
    for (const RingPass& pass : known.passes)
        rings += pass.rings.size();
    if (run.end == HeatEnd::done && run.arcs.size() != rings)
        return fmt::format("{} of {} rings", run.arcs.size(), rings);
    const double maximum = known.heat.preheat.interpass_max->value.value();
    if (!known.heat.cold_iron && !known.passes.front().is_helix && !run.arcs.empty() &&
        run.hottest_start.value() > maximum)
        return fmt::format("a ring begins {:.1f} K over its maximum", run.hottest_start.value() - maximum);
    return {};
}

} // namespace

TEST_CASE("any boss is followed to an end that has a name, or it is said beforehand why not", "[bosses]") {
    const Known sample = all_known();
    const char* asked = std::getenv("RINGFILL_BOSSES");
    const std::uint64_t number = asked ? std::strtoull(asked, nullptr, 10) : usual_number;
    std::map<std::string, int> ends;
    for (std::uint64_t seed = 0; seed < number; ++seed) {
        CAPTURE(seed);
        const Known known = any_boss(sample, seed);
        const FollowedHeat followed = known.follow();
        CHECK(followed.heat_balance.has_value() == followed.no_balance.empty());
        if (!followed.heat_balance) {
            ++ends["not followed: " + followed.no_balance];
            continue;
        }
        ++ends[std::string(word_of(end_of(*followed.heat_balance)))];
        for (const BossRun* boss : {&followed.heat_balance->hot, &followed.heat_balance->cold()})
            CHECK(wrong_with(boss->run, known) == "");
    }
    if (asked)
        for (const auto& [end, count] : ends)
            std::cout << fmt::format("{:6} {}\n", count, end);
    CHECK(ends["done"] >= static_cast<int>(number / 10));
    CHECK(ends.size() > 4);
}
