#include <catch2/catch.hpp>

#include <random>

#include <gsl/gsl_fft_real.h>

#include <ringfill/survey/worn_surface.hpp>

#include "survey/judge.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// Readings in mm between 45 and 47 at random, the same on every machine.
std::vector<Length> random_readings(std::size_t count) {
    std::mt19937_64 draw(1000 + count);
    std::vector<Length> readings;
    for (std::size_t i = 0; i < count; ++i)
        readings.push_back(millimetres(45 + 2 * std::ldexp(static_cast<double>(draw() >> 11), -53)));
    return readings;
}

/// Fourier coefficients in mm by GSL's mixed-radix transform: the mean, then cosine and sine of each wave.
struct Waves {
    double mean = 0;
    std::vector<double> cosines;
    std::vector<double> sines;

    double at(double theta) const {
        double r = mean;
        for (std::size_t j = 0; j < cosines.size(); ++j) {
            const double angle = static_cast<double>(j + 1) * theta;
            r += cosines[j] * std::cos(angle) + sines[j] * std::sin(angle);
        }
        return r;
    }
};

Waves waves_of(const std::vector<Length>& readings) {
    const std::size_t n = readings.size();
    std::vector<double> data;
    for (const Length& r : readings)
        data.push_back(as_mm(r));
    gsl_fft_real_wavetable* table = gsl_fft_real_wavetable_alloc(n);
    gsl_fft_real_workspace* space = gsl_fft_real_workspace_alloc(n);
    gsl_fft_real_transform(data.data(), 1, n, table, space);
    gsl_fft_real_workspace_free(space);
    gsl_fft_real_wavetable_free(table);
    // Half-complex order: real part of wave 0, then real and imaginary part of waves 1, 2, ...; the last wave
    // of an even N is real. The sign of the imaginary part is that of exp(-i).
    Waves waves;
    const double share = 1.0 / static_cast<double>(n);
    waves.mean = data[0] * share;
    for (std::size_t j = 1; 2 * j <= n; ++j) {
        const bool nyquist = 2 * j == n;
        waves.cosines.push_back((nyquist ? 1 : 2) * share * data[2 * j - 1]);
        waves.sines.push_back(nyquist ? 0 : -2 * share * data[2 * j]);
    }
    return waves;
}

} // namespace

TEST_CASE("the interpolant has the coefficients of a fast Fourier transform") {
    for (std::size_t n = 3; n <= 64; ++n) {
        INFO(n << " readings");
        const auto readings = random_readings(n);
        const Interpolant outline(readings);
        const Waves waves = waves_of(readings);
        CHECK_THAT(as_mm(outline.mean), WithinAbs(waves.mean, 46e-12));
        REQUIRE(outline.cosines.size() == n / 2);
        REQUIRE(outline.sines.size() == n / 2);
        for (std::size_t j = 0; j < n / 2; ++j) {
            CHECK_THAT(as_mm(outline.cosines[j]), WithinAbs(waves.cosines[j], 1e-12));
            CHECK_THAT(as_mm(outline.sines[j]), WithinAbs(waves.sines[j], 1e-12));
        }
    }
}

TEST_CASE("the interpolant goes through every reading") {
    for (std::size_t n = 3; n <= 64; ++n) {
        INFO(n << " readings");
        const auto readings = random_readings(n);
        const Interpolant outline(readings);
        for (std::size_t i = 0; i < n; ++i) {
            const double clock = turn * static_cast<double>(i) / static_cast<double>(n);
            CHECK_THAT(as_mm(outline(in_si<Angle>(clock))), WithinAbs(as_mm(readings[i]), 1e-11));
        }
    }
}

TEST_CASE("the Nyquist wave of an even number of readings is a pure cosine") {
    const Interpolant outline({millimetres(51), millimetres(49), millimetres(51), millimetres(49)});
    CHECK_THAT(as_mm(outline.mean), WithinAbs(50, 1e-13));
    CHECK_THAT(as_mm(outline.cosines.back()), WithinAbs(1, 1e-13));
    CHECK(outline.sines.back() == Length());
    CHECK_THAT(as_mm(outline(in_si<Angle>(turn / 8))), WithinAbs(50, 1e-12));
}

// A dense search with GSL's coefficients, 36,000 angles, every one of the library's 720 among them. The
// library may miss the true maximum by at most the sagitta of half a step of its grid, h^2/8 times the
// largest curvature, for which the sum of j^2 times the amplitudes is a bound.
TEST_CASE("largest and smallest are those of a dense search, to the sagitta of half a degree") {
    constexpr int dense = 36'000;
    for (std::size_t n = 3; n <= 64; ++n) {
        INFO(n << " readings");
        const auto readings = random_readings(n);
        const Waves waves = waves_of(readings);
        double curvature = 0;
        for (std::size_t j = 0; j < waves.cosines.size(); ++j)
            curvature +=
                static_cast<double>((j + 1) * (j + 1)) * std::hypot(waves.cosines[j], waves.sines[j]);
        double high = 0;
        double low = 1e9;
        double grid_high = 0;
        double grid_low = 1e9;
        for (int i = 0; i < dense; ++i) {
            const double r = waves.at(turn * i / dense);
            high = std::max(high, r);
            low = std::min(low, r);
            if (i % (dense / 720) == 0) {
                grid_high = std::max(grid_high, r);
                grid_low = std::min(grid_low, r);
            }
        }
        for (const Length& r : readings) {
            grid_high = std::max(grid_high, as_mm(r));
            grid_low = std::min(grid_low, as_mm(r));
        }
        const double sagitta = curvature * (turn / 720) * (turn / 720) / 8;
        const double found_high = as_mm(extremes(readings).largest.radius);
        const double found_low = as_mm(extremes(readings).smallest.radius);
        CHECK_THAT(found_high, WithinAbs(grid_high, 1e-11));
        CHECK_THAT(found_low, WithinAbs(grid_low, 1e-11));
        CHECK(found_high >= high - sagitta);
        CHECK(found_low <= low + sagitta);
        CHECK_THAT(waves.at(extremes(readings).largest.clock.value()), WithinAbs(found_high, 1e-11));
        CHECK_THAT(waves.at(extremes(readings).smallest.clock.value()), WithinAbs(found_low, 1e-11));
    }
}
