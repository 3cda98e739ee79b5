#include <catch2/catch.hpp>

#include <ringfill/take/cylinder_draw.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

double draw_kg_h(double content_kg, double air_degC) {
    return kg_h(propane_draw(in_si<Mass>(content_kg), celsius(air_degC)));
}

} // namespace

// A gas-burner maker's page and a generator maker's manual, identical (read): a cylinder of 100 lb with 50 lb
// in it, thousand Btu/h by air temperature in degF, at 21,591 Btu/lb.
TEST_CASE("a half full cylinder of 45 kg gives what is printed for the cold") {
    const std::pair<double, double> printed[] = {{-18, 64}, {-7, 94}, {4, 125}, {16, 154}, {21, 167}};
    for (const auto& [air, heat] : printed)
        CHECK_THAT(draw_kg_h(45, air), WithinRel(heat * 1000 / 21'591 * 0.45359237, 1e-9));
    CHECK_THAT(draw_kg_h(45, -18), WithinAbs(1.3, 0.05));
    CHECK_THAT(draw_kg_h(45, 4), WithinAbs(2.6, 0.05));
    CHECK_THAT(draw_kg_h(45, 21), WithinAbs(3.5, 0.05));
}

TEST_CASE("between the printed rows it lies on a line, over the last it rises no more, boiling ends it") {
    CHECK_THAT(draw_kg_h(45, 10), WithinRel((draw_kg_h(45, 4) + draw_kg_h(45, 16)) / 2, 1e-9));
    CHECK_THAT(draw_kg_h(45, 40), WithinRel(draw_kg_h(45, 21), 1e-12));
    CHECK_THAT(draw_kg_h(45, -30), WithinRel(draw_kg_h(45, -18) / 2, 1e-9));
    CHECK(draw_kg_h(45, -42) == 0);
    CHECK(draw_kg_h(45, -60) == 0);
}

// (11/45)^(2/3) is 0.391: 1.03 kg/h at 4 degC.
TEST_CASE("other sizes go by their wetted wall") {
    CHECK_THAT(draw_kg_h(11, 4), WithinAbs(0.391 * 2.626, 0.002));
    for (const FuelPack& pack : testing::shop().packs.fuel) {
        INFO(pack.name);
        const double steady = kg_h(cylinder_draw(pack, celsius(4)));
        const double content = pack.content.value.value();
        if (pack.holds == "propane")
            CHECK_THAT(steady, WithinRel(draw_kg_h(content, 4), 1e-12));
        else // a seventh of its content an hour
            CHECK_THAT(steady, WithinAbs(content / 7, 0.01));
    }
}
