#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// The line of a fuel of 50 MJ/kg for so many kilograms of it, of which a fourth reaches the metal, out of
/// cylinders of 8 kg that give 1 kg/h, at a source of 50 kW.
Need fuel_line(double burned_kg, std::optional<Temperature> ambient = std::nullopt, int bores = 1) {
    Fuels fuels;
    fuels.fuels.resize(1);
    fuels.fuels[0].name = "wood gas";
    fuels.fuels[0].net_J_kg = {50e6, "wood"};
    FuelPack pack;
    pack.name = "bottle";
    pack.units = UnitSystem::metric;
    pack.holds = "wood gas";
    pack.content = {kg(10), "a"};
    pack.usable_share = {0.8, "a"};
    pack.draw = {in_si<MassFlow>(1 / factor::hour), "a"};
    Packs packs;
    packs.fuel = {pack};
    const FuelUse use{"arm root",         bores,     in_si<Energy>(burned_kg * 50e6 * 0.25), 0.25,
                      in_si<Power>(50e3), "wood gas"};
    return fuel_needs({use}, fuels, 0, packs, UnitSystem::metric, ambient)[0];
}

} // namespace

// 50 kW burn 3.6 kg/h, which four bottles give. Under 0.2 kg one is enough [common practice, no source].
TEST_CASE("a hand torch is asked for no draw, up to a fifth of a kilogram") {
    CHECK(cover_in_words(fuel_line(0.19)) == "1 x bottle");
    CHECK_THAT(fuel_line(0.19).why, Catch::Contains("burned by a hand torch"));
    CHECK(cover_in_words(fuel_line(0.21)) == "4 x bottle");
}

// Below 0 degC (273.15 K) a bottle gives 0.5 kg/h, and eight are needed [common practice, no source].
TEST_CASE("below freezing a cylinder counts with half its draw") {
    const auto at = [](double kelvin) { return fuel_line(2, in_si<Temperature>(kelvin)); };
    CHECK(cover_in_words(at(273.2)) == "4 x bottle");
    CHECK(cover_in_words(at(290)) == "4 x bottle");
    CHECK(cover_in_words(at(273.1)) == "8 x bottle");
    CHECK_THAT(at(273.1).why, Catch::Contains("below freezing a cylinder frosts"));
}

// By hand: 2 kg of 50 MJ/kg, of which a fourth reaches the metal, are 25 MJ into one bore.
TEST_CASE("the heat of two bores is told as that of two") {
    CHECK_THAT(fuel_line(2).why, Catch::StartsWith("25 MJ into arm root;"));
    CHECK_THAT(fuel_line(2, std::nullopt, 2).why,
               Catch::StartsWith("50 MJ into 2 bores, the most 25 MJ into one of arm root;"));
    CHECK_THAT(fuel_line(2, std::nullopt, 2).need, Catch::WithinAbs(4, 1e-9));
}

// By hand: 2.2 kg at 2 m3 to a kilogram are 4400 L, which a bottle of 4500 holds; with 10 % on top it takes
// two.
TEST_CASE("oxygen is taken with its reserve") {
    Fuels fuels;
    fuels.fuels.resize(1);
    fuels.fuels[0].name = "town gas";
    fuels.fuels[0].net_J_kg = {50e6, "town"};
    fuels.fuels[0].oxygen_m3_kg = Sourced<double>{2, "flame"};
    Packs packs;
    packs.gas = {cylinder("bottle", UnitSystem::metric, "oxygen", 5000, 0.9)};
    const FuelUse use{"pin", 1, in_si<Energy>(2.2 * 50e6 * 0.25), 0.25, in_si<Power>(50e3), "town gas"};
    const auto bottles = [&](double reserve) {
        return cover_in_words(
            fuel_needs({use}, fuels, reserve, packs, UnitSystem::metric, std::nullopt).back());
    };
    CHECK(bottles(0) == "1 x bottle");
    CHECK(bottles(0.1) == "2 x bottle");
}
