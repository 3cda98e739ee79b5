// What a heat balance costs, counted in evaluations of its right-hand side: how often it asks, and what it
// adds to each asking.
#define CATCH_CONFIG_ENABLE_BENCHMARKING
#include <catch2/catch.hpp>

#include <cstdint>

#include <fmt/format.h>

#include <ringfill/heat/thermal_history.hpp>

using namespace ringfill;

TEST_CASE("the heat balance of a boss, against evaluations of its right-hand side alone") {
    ThermalLump boss;
    boss.mass = in_si<Mass>(20);
    boss.conductance = in_si<Conductance>(3);
    boss.emitting = in_si<Area>(0.2);
    boss.ambient = in_si<Temperature>(283);
    const ThermalState cold{boss.ambient, Energy(), Time(), 0};
    const Power flame = in_si<Power>(2'000);
    const Temperature warm = in_si<Temperature>(473);
    const std::int64_t asked = when_at(boss, cold, flame, warm).value().evaluations;
    fmt::print("a warm-up from 10 to 200 degC takes {} evaluations\n", asked);
    REQUIRE(asked > 0);

    BENCHMARK("as many bare evaluations: c(T) and the loss") {
        double sum = 0;
        for (std::int64_t i = 0; i < asked; ++i) {
            const Temperature at = in_si<Temperature>(283.0 + static_cast<double>(i));
            sum += heat_loss(boss, at).value() / boss.metal.specific_heat(at).value();
        }
        return sum;
    };
    BENCHMARK("the warm-up") {
        return when_at(boss, cold, flame, warm)->time.value();
    };
    BENCHMARK("the warm-up and twelve points of its curve") {
        const auto end = when_at(boss, cold, flame, warm);
        return on_the_way(boss, cold, flame, end->time, 12).size();
    };
}
