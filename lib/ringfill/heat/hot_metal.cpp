#include <ringfill/heat/hot_metal.hpp>

#include <algorithm>

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

} // namespace ringfill
