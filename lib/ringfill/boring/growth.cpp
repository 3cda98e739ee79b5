#include <ringfill/boring/growth.hpp>

#include <ringfill/units/metric.hpp>

namespace ringfill {

Length growth(Length diameter, double expansion, Temperature at) {
    return expansion * (deg_c(at) - reference_temperature_degC) * diameter;
}

} // namespace ringfill
