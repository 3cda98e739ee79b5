#include <ringfill/take/cylinder_draw.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>

#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Air [degC] and what a half full cylinder gives [thousand Btu/h].
struct DrawRow {
    double air;
    double heat;
};
constexpr DrawRow half_full[] = {{-42, 0}, {-18, 64}, {-7, 94}, {4, 125}, {16, 154}, {21, 167}};

constexpr double kg_of_heat = 1e3 / 21'591 * factor::pound; // kg/h to a thousand Btu/h
constexpr double printed_content_kg = 45;
constexpr double acetylene_hours = 7;

double heat_of_full_size(double air) {
    const DrawRow* next = std::find_if(std::begin(half_full), std::end(half_full),
                                       [&](const DrawRow& row) { return row.air >= air; });
    if (next == std::end(half_full))
        return std::prev(next)->heat;
    if (next == std::begin(half_full))
        return 0;
    const DrawRow& last = *std::prev(next);
    return last.heat + (air - last.air) / (next->air - last.air) * (next->heat - last.heat);
}

} // namespace

MassFlow propane_draw(Mass content, Temperature air) {
    const double size = std::pow(content.value() / printed_content_kg, 2.0 / 3);
    return in_si<MassFlow>(size * kg_of_heat * heat_of_full_size(deg_c(air)) / factor::hour);
}

MassFlow cylinder_draw(const FuelPack& pack, Temperature air) {
    const bool frosts = pack.holds != "acetylene" && deg_c(air) < 0;
    if (pack.draw)
        return (frosts ? 0.5 : 1.0) * pack.draw->value;
    if (pack.holds == frosting_fuel)
        return propane_draw(pack.content.value, air);
    return in_si<MassFlow>(pack.content.value.value() / acetylene_hours / factor::hour);
}

} // namespace ringfill
