#include <ringfill/heat/boss.hpp>

#include <cmath>
#include <numbers>

#include <boost/math/special_functions/bessel.hpp>

namespace ringfill {

Conductance plate_sink(Length outer_radius, Length plate, Conductivity conductivity) {
    const double lambda_t = conductivity.value() * plate.value();
    const double x = outer_radius.value() * std::sqrt(2 * plate_W_m2K / lambda_t);
    // K₁/K₀ tends to 1 where both vanish beyond the range of a double.
    const double ratio = x < 500 ? boost::math::cyl_bessel_k(1, x) / boost::math::cyl_bessel_k(0, x) : 1;
    return in_si<Conductance>(2 * std::numbers::pi * lambda_t * x * ratio);
}

Boss boss_of(const WornBore& bore, const Build& build, const HotMetal& metal,
             const std::vector<Length>& plates) {
    const double pi = std::numbers::pi;
    Boss boss;
    boss.outer_radius = *bore.boss_diameter / 2.0;
    boss.wall = *build.wall;
    const Area face = pi * (boss.outer_radius * boss.outer_radius - build.skim_radius * build.skim_radius);
    boss.mass = metal.density * face * bore.length;
    boss.surface = 2.0 * pi * (boss.outer_radius + build.skim_radius) * bore.length + 2.0 * face;
    boss.heated = boss.mass;
    const Length reach = boss.outer_radius + warmed_ring;
    for (const Length& plate : plates) {
        boss.heated += metal.density * pi * (reach * reach - boss.outer_radius * boss.outer_radius) * plate;
        boss.sink += plate_sink(boss.outer_radius, plate, metal.conductivity);
    }
    if (bore.carry_off)
        boss.sink = *bore.carry_off;
    return boss;
}

double biot_number(const Boss& boss, const HotMetal& metal, Temperature at, Temperature ambient) {
    const double t = at.value();
    const double a = ambient.value();
    const double h = still_air_W_m2K + scaled_emissivity * stefan_boltzmann * (t * t + a * a) * (t + a);
    const double length = (boss.mass / metal.density / boss.surface).value();
    return h * length / metal.conductivity.value();
}

} // namespace ringfill
