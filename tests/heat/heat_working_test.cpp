#include <catch2/catch.hpp>

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/units/metric.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

Working working_of(const BoreHeat& heat, const std::string& figure) {
    for (const Working& work : heat_working(WornBore(), BoreWeld(), heat))
        if (work.figure == figure)
            return work;
    FAIL("no working of " << figure);
    throw 0; // FAIL has thrown
}

} // namespace

// The interface of plugins names each value with its unit (material/abi.h). The slow cooling was once told in
// hours, by the last word of K_per_h.
TEST_CASE("the working of a value is in the unit of its name") {
    struct Row {
        const char* name;
        const char* unit;
    };
    for (const Row& row :
         {Row{"cooling_max_K_per_h", "K/h"}, Row{"CE_IIW_pct", "%"}, Row{"interpass_max_K", "K"},
          Row{"post_heat_s", "s"}, Row{"crack_test_wait_s", "s"}}) {
        INFO(row.name);
        BoreHeat heat;
        AnsweredFigure value;
        value.name = row.name;
        value.number = 50;
        heat.preheat.values = {value};
        const Working plain = working_of(heat, std::string("heat.values.") + row.name);
        CHECK(plain.unit == row.unit);
        CHECK(plain.formula == "1*x");
        REQUIRE(plain.inputs.size() == 1);
        CHECK(plain.inputs[0].unit == row.unit);
        heat.preheat.values[0].formula = "25*2";
        CHECK(working_of(heat, std::string("heat.values.") + row.name).unit == row.unit);
    }
}

// ISO 13916:1996, clause 4.1 (its rule read in a reproduction): up to 50 mm four times the wall, at most 50
// mm; over it 75 mm.
TEST_CASE("the working of the measuring distance changes with the rule") {
    BoreHeat heat;
    heat.wall_is_given = true;
    heat.wall = millimetres(50);
    CHECK(working_of(heat, "heat.measuring_distance_mm").formula == "min(4*d, 50)");
    CHECK_THAT(working_of(heat, "heat.measuring_distance_mm").value, WithinAbs(50, 1e-9));
    heat.wall = millimetres(50.5);
    CHECK(working_of(heat, "heat.measuring_distance_mm").formula == "75 + 0*d");
    CHECK(working_of(heat, "heat.measuring_distance_mm").value == 75);
}
