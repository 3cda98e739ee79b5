#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <boost/math/special_functions/bessel.hpp>
#include <boost/math/tools/roots.hpp>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinRel;
using testing::constant_metal;
using testing::shape_of;

namespace {

void put_all_at(const BossEquation& equation, BossField& field, double kelvin) {
    for (double& at : field.kelvin)
        at = kelvin;
    for (double& at : field.content)
        at = equation.metal().e(kelvin);
}

BossLoad wrapped_all_over() {
    BossLoad load;
    load.wrapped_outside = load.wrapped_bore = load.wrapped_plates = true;
    return load;
}

/// The k-th root of a function that changes sign once a stretch, by scanning.
template <class Function>
std::vector<double> roots_of(const Function& f, double step, std::size_t count) {
    std::vector<double> roots;
    for (double x = step; roots.size() < count; x += step)
        if (f(x) * f(x + step) < 0) {
            std::uintmax_t rounds = 200;
            const auto [low, high] = boost::math::tools::toms748_solve(
                f, x, x + step, boost::math::tools::eps_tolerance<double>(40), rounds);
            if (std::abs(f(low)) < 1) // a root, no pole
                roots.push_back((low + high) / 2);
        }
    return roots;
}

/// Temperature left of 1 in a plate cooled at both faces, averaged over it [heat conduction textbooks].
double slab_mean(double biot, double fourier) {
    const auto roots = roots_of([&](double x) { return x * std::sin(x) - biot * std::cos(x); }, 0.01, 20);
    double sum = 0;
    for (const double x : roots)
        sum += 2 * std::sin(x) * std::sin(x) / (x * (x + std::sin(x) * std::cos(x))) *
               std::exp(-x * x * fourier);
    return sum;
}

/// Temperature left of 1 at a radius of a hollow cylinder cooled at both surfaces: the Bessel series.
double hollow_cylinder(double inner, double outer, double h_over_lambda, double radius, double diffused) {
    using boost::math::cyl_bessel_j;
    using boost::math::cyl_neumann;
    // R(r) = J0(βr) + q Y0(βr), R' = H R inside, R' = −H R outside.
    const auto q_of = [&](double b) {
        return -(b * cyl_bessel_j(1, b * inner) + h_over_lambda * cyl_bessel_j(0, b * inner)) /
               (b * cyl_neumann(1, b * inner) + h_over_lambda * cyl_neumann(0, b * inner));
    };
    const auto value = [&](double b, double r) {
        return cyl_bessel_j(0, b * r) + q_of(b) * cyl_neumann(0, b * r);
    };
    const auto slope = [&](double b, double r) {
        return -b * (cyl_bessel_j(1, b * r) + q_of(b) * cyl_neumann(1, b * r));
    };
    const auto outside = [&](double b) { return slope(b, outer) + h_over_lambda * value(b, outer); };
    double sum = 0;
    for (const double b : roots_of(outside, 0.5, 12)) {
        // ∫ R r dr = −[r R']/β², ∫ R² r dr = [r²(R² + (R'/β)²)]/2
        const double weight = -(outer * slope(b, outer) - inner * slope(b, inner)) / (b * b);
        const auto square = [&](double r) {
            return r * r / 2 * (std::pow(value(b, r), 2) + std::pow(slope(b, r) / b, 2));
        };
        sum += weight / (square(outer) - square(inner)) * value(b, radius) * std::exp(-b * b * diffused);
    }
    return sum;
}

} // namespace

TEST_CASE("conduction through the wall and along it is that of the Bessel and Fourier series") {
    // Every face wrapped with one coefficient: the product of a hollow cylinder and a plate. A face loses by
    // the temperature in the middle of its cell, which asks for the tolerance.
    constexpr double h = 60;
    constexpr double lambda = 15;
    const HotMetal metal = constant_metal(500, lambda);
    BossEquation equation(boss_mesh(shape_of(240, 100, 160)), metal, celsius(20), h);
    const BossMesh& mesh = equation.mesh();
    BossField field = equation.at_ambient();
    put_all_at(equation, field, celsius(120).value());
    for (double now = 0; now < 1800; now += 10)
        equation.step(field, wrapped_all_over(), 10);
    const double diffused = lambda / (8000 * 500) * 1800;
    const double along = slab_mean(h * 0.08 / lambda, diffused / (0.08 * 0.08));
    const auto expected = [&](double radius) {
        return 100 * along * hollow_cylinder(0.05, 0.12, h / lambda, radius, diffused);
    };
    const double first = (mesh.radii[0] + mesh.radii[1]) / 2;
    const double last = (mesh.radii[mesh.across - 1] + mesh.radii[mesh.across]) / 2;
    CHECK(expected(first) > 1.02 * expected(last)); // the wall is not at one temperature
    CHECK(along < 0.8);
    CHECK_THAT(mean_bore(mesh, field) - celsius(20).value(), WithinRel(expected(first), 0.015));
    CHECK_THAT(mean_skin(mesh, field) - celsius(20).value(), WithinRel(expected(last), 0.015));
}

TEST_CASE("steady heating from outside leaves the bore behind by the closed form of a hollow cylinder") {
    const HotMetal metal = constant_metal(500, 40);
    BossEquation equation(boss_mesh(shape_of(220, 90, 100)), metal, celsius(20), 0); // nothing is lost
    const BossMesh& mesh = equation.mesh();
    BossField field = equation.at_ambient();
    BossLoad load = wrapped_all_over();
    load.heater = 6000;
    for (double now = 0; now < 3000; now += 20)
        equation.step(field, load, 20);
    const double pi = std::numbers::pi;
    const double inner = 0.045;
    const double outer = 0.11;
    const double volume = pi * (outer * outer - inner * inner) * 0.1;
    const double source = 6000 / volume / 40;
    const auto over_bore = [&](double r) {
        return source / 4 * (r * r - inner * inner) - source * inner * inner / 2 * std::log(r / inner);
    };
    const double first = (mesh.radii[0] + mesh.radii[1]) / 2;
    const double last = (mesh.radii[mesh.across - 1] + mesh.radii[mesh.across]) / 2;
    CHECK_THAT(mean_skin(mesh, field) - mean_bore(mesh, field),
               WithinRel(over_bore(last) - over_bore(first), 0.01));
    CHECK_THAT(mean_boss(mesh, field) - celsius(20).value(),
               WithinRel(6000 * 3000 / (8000 * 500 * volume), 1e-9));
}

TEST_CASE("a plate round a boss carries off what an annular fin does") {
    // Steady: a fin of constant coefficient with an insulated rim, by modified Bessel functions.
    constexpr double h = 20;
    constexpr double lambda = 50;
    BossShape shape = shape_of(160, 80, 60);
    shape.plates = {{millimetres(20), millimetres(30), millimetres(400), true}};
    BossEquation equation(boss_mesh(shape), constant_metal(500, lambda), celsius(20), h);
    const BossMesh& mesh = equation.mesh();
    BossField field = equation.at_ambient();
    BossLoad load = wrapped_all_over();
    load.heater = 2000;
    for (double now = 0; now < 200'000; now += 200)
        equation.step(field, load, 200);
    const std::size_t plate = mesh.first_of_plates();
    double into_plate = 0;
    for (const BareFace& face : mesh.faces)
        if (face.kind == FaceKind::wrapped_plate)
            into_plate += h * face.area * (field.kelvin[face.cell] - celsius(20).value());
    using boost::math::cyl_bessel_i;
    using boost::math::cyl_bessel_k;
    const double m = std::sqrt(2 * h / (lambda * 0.02));
    const double from = m * 0.0825; // the middle of the plate's first cell
    const double rim = m * 0.48;
    const double ratio =
        (cyl_bessel_k(1, from) * cyl_bessel_i(1, rim) - cyl_bessel_i(1, from) * cyl_bessel_k(1, rim)) /
        (cyl_bessel_k(0, from) * cyl_bessel_i(1, rim) + cyl_bessel_i(0, from) * cyl_bessel_k(1, rim));
    const double beyond =
        2 * std::numbers::pi * lambda * 0.02 * from * ratio * (field.kelvin[plate] - celsius(20).value());
    const double inner_half = h * 2 * std::numbers::pi * (0.0825 * 0.0825 - 0.08 * 0.08) *
                              (field.kelvin[plate] - celsius(20).value());
    CHECK_THAT(into_plate, WithinRel(beyond + inner_half, 0.01));
}
