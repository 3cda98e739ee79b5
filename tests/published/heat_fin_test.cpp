#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/heat/boss.hpp>

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

} // namespace

// The endless annular fin of the textbooks (Incropera, Fundamentals of Heat and Mass Transfer, section 3.6,
// annular fin with its outer radius gone to infinity; from memory): G = 2πλt x K₁(x)/K₀(x), x = R √(2h/(λt)).
TEST_CASE("the endless annular fin carries off what printed Bessel functions give") {
    const double conductivity = 45;
    const double plate = 0.020;
    const double per_metre = std::sqrt(2 * plate_W_m2K / (conductivity * plate));
    for (const Printed& row : rows) {
        INFO("x = " << row.x);
        const double expected = 2 * std::numbers::pi * conductivity * plate * row.x * row.k1 / row.k0;
        CHECK_THAT(plate_sink(in_si<Length>(row.x / per_metre), in_si<Length>(plate),
                              in_si<Conductivity>(conductivity))
                       .value(),
                   WithinRel(expected, 1e-7)); // the digits printed
    }
}
