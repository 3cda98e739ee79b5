#include <catch2/catch.hpp>

#include <numbers>

#include <ringfill/heat/boss_field.hpp>

using namespace ringfill;
using Catch::WithinRel;

namespace {

/// K₀ and K₁ as printed: Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.8; from memory,
/// eight digits.
struct Printed {
    double x, k0, k1;
};

constexpr Printed rows[] = {
    {0.5, 0.92441907, 1.65644112}, {1.0, 0.42102444, 0.60190723}, {2.0, 0.11389387, 0.13986588}};

constexpr double lambda = 45;
constexpr double radius = 0.1;
constexpr double thickness = 0.02;

/// What a long plate carries off for each kelvin of its root over the air, both faces losing h [W/(m² K)],
/// once nothing changes any more.
double carried_off(double h) {
    BossShape shape{in_si<Length>(0.05), in_si<Length>(radius), in_si<Length>(0.06), in_si<Length>(0.006)};
    shape.plates = {{in_si<Length>(thickness), in_si<Length>(0.03), in_si<Length>(1.5), true}};
    const HotMetal metal{in_si<SpecificHeat>(500), in_si<Conductivity>(lambda), in_si<Density>(7850), ""};
    BossEquation equation(boss_mesh(shape), metal, in_si<Temperature>(293), h);
    BossField field = equation.at_ambient();
    BossLoad load;
    load.heater = 1000;
    for (int i = 0; i < 4000; ++i)
        equation.step(field, load, 100);
    double flow = 0;
    for (const BareFace& face : equation.mesh().faces)
        if (face.kind == FaceKind::wrapped_plate)
            flow += h * face.area * (field.kelvin[face.cell] - 293);
    const double first = field.kelvin[equation.mesh().first_of_plates()] - 293; // 2.5 mm from the root
    const double root = first + flow * 2.5e-3 / (lambda * 2 * std::numbers::pi * radius * thickness);
    return flow / root;
}

} // namespace

// The endless annular fin of the textbooks (Incropera, Fundamentals of Heat and Mass Transfer, section 3.6,
// annular fin with its outer radius gone to infinity; from memory): G = 2πλt x K₁(x)/K₀(x), x = R √(2h/(λt)).
TEST_CASE("a long plate carries off what printed Bessel functions give for an endless annular fin") {
    for (const Printed& row : rows) {
        INFO("x = " << row.x);
        const double h = row.x * row.x / (radius * radius) * lambda * thickness / 2;
        const double expected = 2 * std::numbers::pi * lambda * thickness * row.x * row.k1 / row.k0;
        CHECK_THAT(carried_off(h), WithinRel(expected, 0.02));
    }
}
