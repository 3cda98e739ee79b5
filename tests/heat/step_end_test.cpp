#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

ThermalLump lump_of(double kg) {
    ThermalLump lump;
    lump.mass = in_si<Mass>(kg);
    lump.conductance = in_si<Conductance>(1.2);
    lump.emitting = in_si<Area>(0.09);
    lump.ambient = celsius(10);
    return lump;
}

/// The last temperature on the way that the integration reaches without a further step, and the next number,
/// for which it takes one more: what it cost rises between them.
std::pair<double, double> end_of_a_step(const ThermalLump& lump, Power power, double from, double to) {
    ThermalState begin;
    begin.temperature = in_si<Temperature>(from);
    const auto cost = [&](double goal) {
        return when_at(lump, begin, power, in_si<Temperature>(goal)).value().evaluations;
    };
    double before = std::nextafter(from, to);
    double beyond = to;
    const std::int64_t first = cost(before);
    REQUIRE(cost(beyond) > first);
    while (std::nextafter(before, to) != beyond) {
        const double middle = before + (beyond - before) / 2;
        (cost(middle) > first ? beyond : before) = middle;
    }
    return {before, beyond};
}

} // namespace

// The curve through a step meets its end but for a rounding, so that a goal close by may lie beyond it.
TEST_CASE("a goal at the end of a step is met to a rounding, from below and from above") {
    for (int tenths = 2; tenths < 60; ++tenths) {
        CAPTURE(tenths);
        const ThermalLump lump = lump_of(tenths / 10.0);
        for (const double to : {celsius(250).value(), celsius(30).value()}) {
            const bool warming = to > celsius(150).value();
            const double from = warming ? celsius(10).value() : celsius(250).value();
            const Power power = in_si<Power>(warming ? 6000 : 0);
            const auto [before, beyond] = end_of_a_step(lump, power, from, to);
            ThermalState begin;
            begin.temperature = in_si<Temperature>(from);
            const ThermalState low = when_at(lump, begin, power, in_si<Temperature>(before)).value();
            const ThermalState high = when_at(lump, begin, power, in_si<Temperature>(beyond)).value();
            CHECK_THAT(low.temperature.value(), WithinAbs(before, 1e-9));
            CHECK_THAT(high.temperature.value(), WithinAbs(beyond, 1e-9));
            CHECK_THAT(high.time.value(), WithinRel(low.time.value(), 1e-9));
            const double close = before + (from - to) * 1e-6; // a little way before the end
            CHECK_THAT(when_at(lump, begin, power, in_si<Temperature>(close)).value().temperature.value(),
                       WithinAbs(close, 1e-9));
        }
    }
}
