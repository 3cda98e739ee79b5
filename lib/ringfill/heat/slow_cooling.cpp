#include <ringfill/heat/slow_cooling.hpp>

#include <cmath>

#include <boost/math/tools/roots.hpp>

#include <ringfill/heat/boss.hpp>

namespace ringfill {
namespace {

/// Where the natural rate falls to the allowed one, between two temperatures of which it lies above it and
/// below it.
Temperature where_free(const ThermalLump& lump, Temperature from, Temperature to, double rate_K_s) {
    const auto too_fast = [&](double kelvin) {
        const Temperature at = in_si<Temperature>(kelvin);
        return heat_loss(lump, at).value() / (lump.mass.value() * lump.metal.specific_heat(at).value()) -
               rate_K_s;
    };
    if (too_fast(from.value()) <= 0)
        return from;
    if (too_fast(to.value()) >= 0)
        return to;
    std::uintmax_t rounds = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(
        too_fast, to.value(), from.value(), boost::math::tools::eps_tolerance<double>(45), rounds);
    return in_si<Temperature>((low + high) / 2);
}

/// Losses over the temperature, ∫ loss dT [W K], in closed form.
double loss_integral(const ThermalLump& lump, Temperature from, Temperature to) {
    const double a = lump.ambient.value();
    const auto primitive = [&](double t) {
        return lump.conductance.value() * (t * t / 2 - a * t) +
               lump.emitting.value() * stefan_boltzmann * (std::pow(t, 5) / 5 - std::pow(a, 4) * t);
    };
    return primitive(to.value()) - primitive(from.value());
}

} // namespace

std::optional<SlowCooling> cool_slowly(const ThermalLump& lump, Temperature from, Temperature to,
                                       double rate_K_s) {
    if (from <= to)
        return SlowCooling{Time(), from, Time(), Energy()};
    const Temperature free = where_free(lump, from, to, rate_K_s);
    const auto there = when_at(lump, {free, Energy(), Time()}, Power(), to);
    if (!there)
        return std::nullopt;
    SlowCooling cooling;
    cooling.free_from = free;
    cooling.held = in_si<Time>((from.value() - free.value()) / rate_K_s);
    cooling.time = cooling.held + there->time;
    cooling.heat = in_si<Energy>(loss_integral(lump, free, from) / rate_K_s) - heat_content(lump, free, from);
    return cooling;
}

} // namespace ringfill
