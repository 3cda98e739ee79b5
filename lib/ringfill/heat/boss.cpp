#include <ringfill/heat/boss.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <boost/math/special_functions/bessel.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {

SpecificHeat carbon_steel_specific_heat(Temperature at) {
    const double t = std::max(deg_c(at), 20.0);
    double c = 650;
    if (t < 600)
        c = 425 + t * (7.73e-1 + t * (-1.69e-3 + t * 2.22e-6));
    else if (t < 735)
        c = 666 + 13'002 / (738 - t);
    else if (t < 900)
        c = 545 + 17'820 / (t - 731);
    return in_si<SpecificHeat>(c);
}

Conductivity carbon_steel_conductivity(Temperature at) {
    const double t = std::max(deg_c(at), 20.0);
    return in_si<Conductivity>(t < 800 ? 54 - 3.33e-2 * t : 27.3);
}

std::optional<HotMetal> hot_metal(const Base& base) {
    const Temperature usual = celsius(150);
    if (base.specific_heat && base.conductivity)
        return HotMetal{base.specific_heat->value, base.conductivity->value, base.density.value,
                        base.specific_heat->source};
    if (base.structure == "ferritic" || base.structure == "martensitic")
        return HotMetal{std::nullopt, carbon_steel_conductivity(usual), base.density.value, "EN1993-1-2"};
    return std::nullopt;
}

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
