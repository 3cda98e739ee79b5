#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/table/shelf.hpp>
#include <ringfill/take/cylinder_draw.hpp>
#include <ringfill/take/needs.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

#include "take/round_fuels.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

const Shelf own{{RINGFILL_TABLES}};

} // namespace

// Specific heat of EN 1993-1-2:2005, 3.4.1.2 (restated), integrated from 20 to 150 degC: 6.22 MJ into 100 kg.
// Over the net heating value of propane from the enthalpies of formation in Sonntag, Borgnakke and Van Wylen,
// example 15.10 (restated in a companion): 0.134 kg if all reaches the metal, 0.447 kg if 30 % does. To the
// last digit.
TEST_CASE("propane for a hundred kilograms of steel follows from two published formulas") {
    const auto enthalpy = [](double t) {
        return 425 * t + 0.773 / 2 * t * t - 1.69e-3 / 3 * t * t * t + 2.22e-6 / 4 * t * t * t * t;
    };
    const double heat_MJ = 100 * (enthalpy(150) - enthalpy(20)) / 1e6;
    CHECK_THAT(heat_MJ, WithinAbs(6.22, 0.005));
    const Bibliography sources = read_sources(table_files(own, "sources.json"));
    const Fuels fuels = read_fuels(table_files(own, "fuels.json"), sources);
    const Packs packs = read_packs(table_files(own, "packs.json"), sources);
    const auto propane_kg = [&](double efficiency) {
        return fuel_needs({use_of(heat_MJ, 30, "propane", 1, "pin", efficiency)}, fuels, 0, packs, metric)[0]
            .need;
    };
    CHECK_THAT(propane_kg(1), WithinAbs(0.134, 0.0005));
    CHECK_THAT(propane_kg(0.3), WithinAbs(0.447, 0.0005));
}

// Worked by hand: 10 MJ / (0.25 x 50 MJ/kg) = 0.8 kg, and 10 %; 10 kW / 50 MJ/kg = 0.72 kg/h.
TEST_CASE("a line of fuel says how much, in what and why") {
    const auto lines = lines_for({use_of(10, 10)});
    REQUIRE(lines.size() == 1);
    CHECK(item(lines[0]) == "fuel wood gas");
    CHECK(unit(lines[0]) == "kg");
    CHECK_THAT(lines[0].need, WithinAbs(0.8, exact));
    CHECK_THAT(lines[0].reserve, WithinAbs(0.08, exact));
    CHECK(cover_in_words(lines[0]) == "1 x small");
    CHECK_THAT(lines[0].supplied, WithinAbs(8, exact));
    CHECK_THAT(lines[0].spare, WithinAbs(7.12, exact));
    CHECK(lines[0].source == "wood");
    CHECK(lines[0].why ==
          "10 MJ into arm root; 25 % of the 50 MJ/kg that wood gas gives reaches the metal; 10 kW "
          "burns 0.72 kg/h; on top 10 %");
    CHECK(lines[0].working.size() == 4);
}

// Worked by hand: 3 x 10 / (0.25 x 50) + 20 / (0.5 x 50) = 2.4 + 0.8 kg; 3 x 10 + 20 = 50 MJ.
TEST_CASE("bores are summed with their counts and efficiencies") {
    const auto lines =
        lines_for({use_of(10, 10, "wood gas", 3), use_of(20, 5, "wood gas", 1, "lug", 0.5)}, 0);
    REQUIRE(lines.size() == 1);
    CHECK_THAT(lines[0].need, WithinAbs(3.2, exact));
    CHECK(lines[0].why ==
          "50 MJ into 4 bores, the most 20 MJ into one of lug; 25 to 50 % of the 50 MJ/kg that "
          "wood gas gives reaches the metal; 10 kW burns 0.72 kg/h; on top 0 %");
}

// Worked by hand: a small cylinder gives 8 kg at 1 kg/h, a large one 32 kg at 3 kg/h; 72 kW burns 5.184 kg/h.
TEST_CASE("cylinders stand ready for the draw, not for the content alone") {
    const auto covered = [](double heat_MJ, double source_kW) {
        return cover_in_words(lines_for({use_of(heat_MJ, source_kW)}, 0)[0]);
    };
    CHECK(covered(10, 13.8) == "1 x small");           // 0.99 kg/h
    CHECK(covered(10, 20) == "2 x small");             // 1.44 kg/h, lighter than a large one
    CHECK(covered(10, 40) == "1 x large");             // 2.88 kg/h, fewer than three small ones
    CHECK(covered(375, 40) == "1 x large");            // 30 kg
    CHECK(covered(375, 50) == "1 x small, 1 x large"); // 30 kg, 3.6 kg/h
    CHECK(covered(500, 55) == "1 x small, 1 x large"); // 40 kg at 3.96 kg/h
    CHECK(covered(500, 60) == "2 x small, 1 x large"); // 40 kg at 4.32 kg/h
    CHECK(covered(10, 72) == "2 x large");             // 5.184 kg/h, fewer than three small and a large
    CHECK(lines_for({use_of(10, 20)}, 0)[0].why ==
          "10 MJ into arm root; 25 % of the 50 MJ/kg that wood gas gives reaches the metal; 20 kW burns 1.44 "
          "kg/h; on top 0 %; 1 × small would hold it but gives only 1.00 kg/h steadily, 2 × small gives 2.00 "
          "kg/h");
}

// Worked by hand: 2 MJ / (0.25 x 50 MJ/kg) = 0.16 kg, and 10 %: 0.176 kg; 3 MJ make 0.264 kg. 40 kW burn 2.88
// kg/h.
TEST_CASE("a few grams to take the chill off are burned by a hand torch: one smallest cylinder") {
    const Need little = lines_for({use_of(2, 40)})[0];
    CHECK(cover_in_words(little) == "1 x small");
    CHECK(little.why.ends_with("on top 10 %; so little is burned by a hand torch, whatever a cylinder gives "
                               "in an hour: the smallest one"));
    CHECK(little.working.size() == 4);
    CHECK(cover_in_words(lines_for({use_of(3, 40)})[0]) == "1 x large");
}

TEST_CASE("cylinders that give the draw and not the content are not enough") {
    Packs packs = fuel_packs();
    packs.fuel.push_back(fuel_cylinder("wide valve", metric, "wood gas", 1, 5));
    const Need line = fuel_needs({use_of(500, 60)}, round_fuels(), 0, packs, metric)[0]; // 40 kg at 4.32 kg/h
    CHECK(line.supplied >= line.need);
    CHECK(cover_in_words(line) == "2 x small, 1 x large");
}

TEST_CASE("over many heats and heaters the product's cylinders give both content and draw") {
    const Bibliography sources = read_sources(table_files(own, "sources.json"));
    const Fuels fuels = read_fuels(table_files(own, "fuels.json"), sources);
    const Packs packs = read_packs(table_files(own, "packs.json"), sources);
    for (const UnitSystem units : {metric, UnitSystem::inch})
        for (const Fuel& fuel : fuels.fuels)
            for (double heat_MJ = 0.5; heat_MJ < 3000; heat_MJ *= 1.7)
                for (double source_kW = 1; source_kW < 300; source_kW *= 1.3) {
                    const Need line =
                        fuel_needs({use_of(heat_MJ, source_kW, fuel.name)}, fuels, 0.1, packs, units)[0];
                    double draw = 0;
                    double content = 0;
                    for (const PackCount& taken : line.cover)
                        for (const FuelPack& pack : packs.fuel)
                            if (pack.name == taken.pack) {
                                draw += static_cast<double>(taken.count) *
                                        cylinder_draw(pack, celsius(20)).value();
                                content += static_cast<double>(taken.count) * pack.usable().value();
                            }
                    if (content < line.need + line.reserve - exact || line.spare < -exact)
                        FAIL(heat_MJ << " MJ of " << fuel.name << " are not held by "
                                     << cover_in_words(line));
                    if ((fuel.oxygen_m3_kg || line.need + line.reserve >= 0.2) &&
                        draw * fuel.net_J_kg.value < source_kW * 1e3 * (1 - 1e-6))
                        FAIL(source_kW << " kW of " << fuel.name << " are more than "
                                       << cover_in_words(line));
                }
}

// Worked by hand: 10 MJ / (0.25 x 50 MJ/kg) = 0.8 kg and 2 m3/kg: 1600 L, and 10 %; a bottle gives 4500 L.
TEST_CASE("a fuel that takes oxygen has its line of it") {
    const auto lines = lines_for({use_of(10, 10, "town gas")});
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "fuel town gas");
    CHECK(item(lines[1]) == "oxygen for town gas");
    CHECK(unit(lines[1]) == "L");
    CHECK_THAT(lines[1].need, WithinAbs(1600, 1e-6));
    CHECK_THAT(lines[1].reserve, WithinAbs(160, 1e-6));
    CHECK(cover_in_words(lines[1]) == "1 x oxygen bottle");
    CHECK_THAT(lines[1].spare, WithinAbs(2740, 1e-6));
    CHECK(lines[1].source == "flame");
    CHECK(lines[1].why == "2000 L to a kilogram of town gas for a neutral flame; on top 10 %");
}

TEST_CASE("each fuel has its line, electric heat and no heat have none") {
    const auto lines =
        lines_for({use_of(10, 10, "town gas"), use_of(10, 10, ""), use_of(0, 10), use_of(5, 10)});
    REQUIRE(lines.size() == 3);
    CHECK(item(lines[0]) == "fuel town gas");
    CHECK(item(lines[2]) == "fuel wood gas");
    CHECK(lines_for({use_of(10, 10, "")}).empty());
}

// 0.72 kg/h are 1.59 lb/h; 2 m3/kg are 32.0 ft3/lb.
TEST_CASE("in inch units fuel is told in pounds and taken in inch cylinders") {
    const auto wood = lines_for({use_of(10, 10)}, 0.1, UnitSystem::inch);
    CHECK(cover_in_words(wood[0]) == "1 x inch");
    CHECK(wood[0].why ==
          "10 MJ into arm root; 25 % of the 50 MJ/kg that wood gas gives reaches the metal; 10 kW "
          "burns 1.59 lb/h; on top 10 %");
    const auto town = lines_for({use_of(10, 10, "town gas")}, 0.1, UnitSystem::inch);
    CHECK(town[1].why ==
          "32.0 ft³ to a pound of town gas for a neutral flame; on top 10 %; no cylinder of oxygen "
          "is in the table of packs");
}

TEST_CASE("a fuel that no cylinder holds is needed and not covered") {
    Packs packs = fuel_packs();
    for (FuelPack& pack : packs.fuel)
        pack.stocked = false;
    const Need line = fuel_needs({use_of(10, 10)}, round_fuels(), 0.1, packs, metric)[0];
    CHECK_FALSE(line.pack_known);
    CHECK(line.cover.empty());
    CHECK_THAT(line.need, WithinAbs(0.8, exact));
    CHECK(line.working.size() == 2);
    CHECK(line.why ==
          "10 MJ into arm root; 25 % of the 50 MJ/kg that wood gas gives reaches the metal; 10 kW "
          "burns 0.72 kg/h; on top 10 %; no cylinder of this fuel is in the table of packs");
}

TEST_CASE("a fuel of no table and an efficiency of none are errors of the program") {
    CHECK_THROWS_WITH(lines_for({use_of(10, 10, "peat gas")}), "no fuel is named peat gas");
    CHECK_THROWS_AS(lines_for({use_of(10, 10, "peat gas")}), std::logic_error);
    CHECK_THROWS_AS(lines_for({use_of(10, 10, "wood gas", 1, "pin", 0)}), std::logic_error);
    CHECK_THROWS_AS(lines_for({use_of(10, 10, "wood gas", 1, "pin", std::nan(""))}), std::logic_error);
}
