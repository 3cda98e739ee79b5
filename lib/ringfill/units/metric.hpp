#pragma once

#include <ringfill/units/factor.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

// Quantities as the numbers that results, tables and workings write: the trade's metric units.
template <class Quantity>
double number_in_si(Quantity quantity) {
    return quantity.value();
}
inline double mm(Length length) {
    return length.value() * 1e3;
}
inline double micrometres(Length length) {
    return length.value() * 1e6;
}
inline double mm2(Area area) {
    return area.value() * 1e6;
}
inline double mm3(Volume volume) {
    return volume.value() * 1e9;
}
inline double litres(Volume volume) {
    return volume.value() / factor::litre;
}
inline double mm_min(Speed speed) {
    return speed.value() * 1e3 * factor::minute;
}
inline double m_min(Speed speed) {
    return speed.value() * factor::minute;
}
inline double rev_min(Turning turning) {
    return turning.value() * factor::minute;
}
inline double kg_h(MassFlow flow) {
    return flow.value() * factor::hour;
}
inline double deg_c(Temperature temperature) {
    return temperature.value() - factor::celsius_zero;
}
inline double kj_mm(EnergyPerLength energy) {
    return energy.value() / 1e6;
}
inline double degrees(Angle angle) {
    return angle.value() / factor::degree;
}

/// A temperature from its figure in degrees Celsius.
inline Temperature celsius(double degrees) {
    return in_si<Temperature>(degrees + factor::celsius_zero);
}

} // namespace ringfill
