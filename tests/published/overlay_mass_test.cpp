#include <catch2/catch.hpp>

#include <numbers>

#include <ringfill/units/factor.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

Length inches(double value) {
    return in_si<Length>(value * factor::inch);
}

/// Mass of a ring of metal of a mean diameter, filled like a groove: its section turned about the axis.
Mass ring_mass(Length mean_diameter, Length thickness, Length width, double density_lb_in3) {
    Deposition wire;
    wire.density = in_si<Density>(density_lb_in3 * factor::pound / factor::cubic_inch);
    wire.rate = in_si<MassFlow>(1e-3);
    Bead bead;
    bead.section = in_si<Area>(1e-5);
    bead.travel = in_si<Speed>(5e-3);
    const Groove groove{mean_diameter + thickness, width};
    return fill_groove(groove, 0.5 * (mean_diameter - thickness), bead, wire).laid;
}

/// A printed overlay on a cylinder: diameter, thickness [in], weight of an inch of it [lb].
struct Overlay {
    double diameter, thickness, printed;
};

// Data sheet of a hardfacing wire, weight of weld metal on cylinders at 0.3 lb/in3; read in the source. It
// counts the thin ring, pi D t, which is exactly a ring of the mean diameter D. The tolerance is a unit of
// the last digit, and a thousandth where its pi is shortened.
constexpr Overlay overlays[] = {
    {4, 0.125, 0.47},  {4, 0.5, 1.88},    {4, 0.75, 2.83},   {5, 0.25, 1.18},   {6, 0.375, 2.12},
    {6, 0.625, 3.53},  {7, 0.75, 4.95},   {8, 0.5, 3.77},    {9, 0.625, 5.30},  {10, 0.125, 1.18},
    {10, 0.75, 7.07},  {12, 0.375, 4.24}, {14, 0.5, 6.60},   {16, 0.75, 11.31}, {20, 0.625, 11.78},
    {24, 0.75, 16.96}, {28, 0.5, 13.19},  {32, 0.75, 22.62},
};

/// A printed weight of a rectangle of weld metal along its length.
struct Rectangle {
    double thickness, gap, printed;
};

// Printed filler-metal handbook, chart "weight per foot of fillet and butt elements", rectangles: inches,
// pounds a foot at 0.283 lb/in3; read in the source. It truncates in places: a unit and a half of the last
// digit. Left out: 5/16 x 3/8 and 7/16 x 1/16 in, which are misprinted.
constexpr Rectangle pounds_a_foot[] = {
    {0.25, 0.25, 0.212}, {0.375, 0.125, 0.159}, {0.5, 0.5, 0.849}, {1, 0.125, 0.425}, {1, 0.5, 1.698}};

// The same handbook, chart of weight per metre: mm, kg/m. Read in the source. The density of 7.83 g/cm3 was
// fitted once to this very chart, so these four check the shape, not the density.
constexpr Rectangle kg_a_metre[] = {
    {9.53, 9.525, 0.711}, {12.7, 6.35, 0.632}, {12.7, 12.7, 1.263}, {15.88, 3.175, 0.396}};

constexpr double g_cm3_in_lb_in3 = 1e3 * factor::cubic_inch / factor::pound;

} // namespace

TEST_CASE("a ring of weld metal weighs what a printed table of overlays says") {
    for (const Overlay& one : overlays) {
        INFO(one.diameter << " in, " << one.thickness << " in thick");
        const double pounds =
            ring_mass(inches(one.diameter), inches(one.thickness), inches(1), 0.3).value() / factor::pound;
        CHECK_THAT(pounds, WithinAbs(one.printed, 0.0051 + 1e-3 * one.printed));
    }
}

TEST_CASE("a groove of a foot round weighs what a printed chart says of a foot of weld") {
    for (const Rectangle& one : pounds_a_foot) {
        INFO(one.thickness << " x " << one.gap << " in");
        const double pounds =
            ring_mass(inches(12 / std::numbers::pi), inches(one.thickness), inches(one.gap), 0.283).value() /
            factor::pound;
        CHECK_THAT(pounds, WithinAbs(one.printed, 0.0015));
    }
}

TEST_CASE("a groove of a metre round weighs what a printed chart says of a metre of weld") {
    for (const Rectangle& one : kg_a_metre) {
        INFO(one.thickness << " x " << one.gap << " mm");
        const double kg = ring_mass(in_si<Length>(1 / std::numbers::pi), in_si<Length>(one.thickness * 1e-3),
                                    in_si<Length>(one.gap * 1e-3), 7.83 * g_cm3_in_lb_in3)
                              .value();
        CHECK_THAT(kg, WithinAbs(one.printed, 0.0016));
    }
}
