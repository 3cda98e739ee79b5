#include <catch2/catch.hpp>

#include "heat/heat_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

double maximum(HeatSample& sample) {
    return deg_c(sample.preheat().interpass_max.value().value);
}

} // namespace

// Section 10 of the computation, common practice: minimum + 100 K, 350 degC, tempering - 50 K, the lowest.
TEST_CASE("without a document the usual maximum holds") {
    HeatSample sample({{"formula", 150}});
    CHECK_THAT(maximum(sample), WithinAbs(250, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "common practice, no document gives one");
    sample = HeatSample({{"formula", 290}});
    CHECK_THAT(maximum(sample), WithinAbs(350, 1e-9));
    sample.grade().tempering = Sourced<Temperature>{celsius(380), "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(330, 1e-9));
    CHECK(sample.preheat().state != PreheatState::contradictory);
    sample.grade().tempering.reset();
    sample.grade().softens_over = Sourced<Temperature>{celsius(310), "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(310, 1e-9));
}

// 100 K over a minimum that nobody knows would be leave to weld cold.
TEST_CASE("while preheat is asked for without a figure there is no usual maximum") {
    HeatSample sample({{"graph", 0, RF_NO_FIGURE}});
    CHECK_FALSE(sample.preheat().interpass_max);
    sample.grade().interpass_max = Sourced<Temperature>{celsius(300), "practice"}; // a document's stands
    CHECK_THAT(maximum(sample), WithinAbs(300, 1e-9));
    sample = HeatSample({{"graph", 0, RF_NO_FIGURE}, {"formula", 150}});
    CHECK_THAT(maximum(sample), WithinAbs(250, 1e-9));
}

TEST_CASE("of several documents the lowest maximum holds") {
    HeatSample sample({{"formula", 150}});
    sample.grade().interpass_max = Sourced<Temperature>{celsius(300), "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(300, 1e-9));
    PreheatRow listed = row(0, 120);
    listed.maximum = Sourced<Temperature>{celsius(260), "practice"};
    sample.family.preheat_groups = {{"a document", {}, {}, {listed}}};
    CHECK_THAT(maximum(sample), WithinAbs(300, 1e-9)); // it does not list the grade
    sample.grade().preheat_groups = {"a document"};
    CHECK_THAT(maximum(sample), WithinAbs(260, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "a document");
}

TEST_CASE("stainless filler on steel keeps its own maximum, and is contradictory over it") {
    HeatSample sample({{"formula", 150}});
    sample.what.stainless_on_steel = true;
    CHECK_THAT(maximum(sample), WithinAbs(175, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "the stainless filler on steel");
    sample = HeatSample({{"formula", 176}});
    sample.what.stainless_on_steel = true;
    CHECK(sample.preheat().state == PreheatState::contradictory);
}

TEST_CASE("a table that gives the maximum over the minimum is followed, the lowest still holds") {
    HeatSample sample({{"formula", 130}});
    sample.grade().interpass_max = Sourced<Temperature>{celsius(200), "practice"};
    sample.grade().interpass_range_K = Sourced<double>{50, "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(180, 1e-9));
    CHECK(sample.preheat().interpass_max->by == "the table for G, 50 K over the minimum");
    sample = HeatSample({{"formula", 170}});
    sample.grade().interpass_max = Sourced<Temperature>{celsius(200), "practice"};
    sample.grade().interpass_range_K = Sourced<double>{50, "practice"};
    CHECK_THAT(maximum(sample), WithinAbs(200, 1e-9));
}

TEST_CASE("a minimum over the maximum is contradictory and neither is changed") {
    HeatSample sample({{"formula", 250}});
    sample.grade().interpass_max = Sourced<Temperature>{celsius(225), "practice"};
    const Preheat found = sample.preheat();
    CHECK(found.state == PreheatState::contradictory);
    CHECK_THAT(deg_c(found.minimum->value), WithinAbs(250, 1e-9));
    CHECK_THAT(deg_c(found.interpass_max->value), WithinAbs(225, 1e-9));
    sample.grade().interpass_max->value = celsius(250);
    CHECK(sample.preheat().state != PreheatState::contradictory);
}
