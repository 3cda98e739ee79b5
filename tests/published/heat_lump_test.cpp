#include <catch2/catch.hpp>

#include <numbers>

#include <ringfill/heat/thermal_history.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

ThermalLump lump(double heat_capacity, double conductance, double emitting, double ambient_degC) {
    ThermalLump made;
    made.mass = in_si<Mass>(1);
    made.metal.constant = in_si<SpecificHeat>(heat_capacity);
    made.conductance = in_si<Conductance>(conductance);
    made.emitting = in_si<Area>(emitting);
    made.ambient = celsius(ambient_degC);
    return made;
}

/// A body that cools or warms by convection alone, per m² of its surface.
struct Cooling {
    const char* source;
    double capacity; ///< ρ c V/A [J/(m² K)]
    double h;
    double from, air, seconds;
    double expected, within;
};

/// Loss of a surface [W], its convection (h A) and radiation (ε A).
struct Loss {
    const char* source;
    double conductance, emitting;
    double surface_K, room_K;
    double expected, within;
};

constexpr double pi = std::numbers::pi;

const Cooling coolings[] = {
    // Read in a companion; the chart of the book gives 281, the series 279.6, worked out apart from this
    // library.
    {"Cengel, Heat and Mass Transfer, example 4.4: brass plate of 40 mm in an oven", 110 / 33.9e-6 * 0.02,
     120, 20, 500, 420, 279.6, 0.6},
    // Read in a companion; the book gives 63 in the middle and 62 at the top, the series 62.7 and 62.1.
    {"Cengel, Heat and Mass Transfer, example 4.8: short brass cylinder",
     110 / 3.39e-5 * (0.05 * 0.12 / (2 * 0.05 + 2 * 0.12)), 60, 120, 25, 900, 62.1, 0.3},
    // Read in a companion whose working overwrites its thickness: the printed 77.29 fits 15 mm.
    {"Sachdeva, Fundamentals of Engineering Heat and Mass Transfer, example 5.5: slab", 9000 * 380 * 0.015,
     77.29, 210, 100, 300, 170, 0.01},
};

const Loss losses[] = {
    // All read in companions of worked examples, from example 9 on with 0 °C as 273 K.
    {"Incropera, example 1.2: emitted at 200 °C, emissivity 0.8, W/m²", 0, 0.8, 473.15, 0, 2273, 0.6},
    {"Incropera, example 1.2: sent by a room of 25 °C, W/m²", 0, 1, 298.15, 0, 448, 0.5},
    {"Incropera, example 9.4: pipe of 100 mm at 165 °C, natural convection of h 7.23 and radiation, W/m",
     7.23 * pi * 0.1, 0.85 * pi * 0.1, 438, 296, 763, 0.6},
    {"Cengel, example 9.2: plate of 0.6 m at 90 °C, radiation of a black surface", 0, 0.36, 363, 303, 182,
     0.5},
};

} // namespace

TEST_CASE("bodies cool and warm by convection as worked examples say") {
    for (const Cooling& row : coolings) {
        INFO(row.source);
        const ThermalState end =
            after(lump(row.capacity, row.h, 0, row.air), {celsius(row.from), Energy(), Time()}, Power(),
                  in_si<Time>(row.seconds));
        CHECK_THAT(deg_c(end.temperature), WithinAbs(row.expected, row.within));
    }
}

TEST_CASE("surfaces lose heat by convection and radiation as worked examples say") {
    for (const Loss& row : losses) {
        INFO(row.source);
        CHECK_THAT(heat_loss(lump(1, row.conductance, row.emitting, row.room_K - 273.15),
                             in_si<Temperature>(row.surface_K))
                       .value(),
                   WithinAbs(row.expected, row.within));
    }
}
