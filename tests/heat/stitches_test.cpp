#include <catch2/catch.hpp>

#include <ringfill/heat/boss_mesh.hpp>
#include <ringfill/heat/heat_run.hpp>
#include <ringfill/heat/stitches.hpp>

#include "heat/heat_run_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// 20 rings of 300 mm in two minutes each: 150 mm/min.
RingPass layer_of_rings() {
    RingPass pass{"bore", 1, std::vector<Time>(20, in_si<Time>(120)), Length(), millimetres(100)};
    pass.travel = in_si<Speed>(0.3 / 120);
    return pass;
}

/// A boss of grey iron laid cold in air of 15 degC.
HeatRunSettings cold_iron() {
    HeatRunSettings iron = usual();
    iron.ambient = celsius(15);
    iron.minimum = celsius(20);
    iron.maximum = celsius(60);
    iron.by_stitches = true;
    iron.step_over = in_si<Time>(15);
    iron.arc = in_si<Power>(1500);
    return iron;
}

} // namespace

// Stitches of 25 to 50 mm (model of cold practice): 300 mm are 6 of 50 mm, 301 mm are 7 of 43 mm.
TEST_CASE("rings are laid in stitches of at most 50 mm, with the same arc") {
    RingPass rings = layer_of_rings();
    const RingPass six = in_stitches({rings}).front();
    CHECK(six.rings.size() == 120);
    CHECK(six.stitches_a_ring == 6);
    CHECK_THAT(six.rings.front().value(), WithinRel(20.0, 1e-12));
    rings.rings.back() = in_si<Time>(120.0 * 301 / 300);
    const RingPass seven = in_stitches({rings}).front();
    CHECK(seven.rings.size() == 140);
    CHECK_THAT(seven.rings.back().value(), WithinRel(120.0 * 301 / 300 / 7, 1e-12));
    // The second ring of 5 mm heats the same part of the bore by its stitches.
    CHECK(heated_band(six, 11) == heated_band(rings, 1));
    CHECK(heated_band(six, 12) == heated_band(rings, 2));
}

TEST_CASE("a stitch begins under two thirds of the way from the air to the maximum") {
    CHECK_THAT(deg_c(stitch_begins_under(celsius(15), celsius(60))), WithinAbs(45, 1e-9));
    CHECK_THAT(deg_c(stitch_begins_under(celsius(-12), celsius(60))), WithinAbs(36, 1e-9));
}

TEST_CASE("no stitch begins while the part is warmer than that, and none is a rest") {
    const HeatRun run = heat_run(cold_iron(), {layer_of_rings()});
    REQUIRE(run.end == HeatEnd::done);
    CHECK(run.stitches == 120);
    CHECK(run.rests == 0);
    CHECK(run.hottest_start <= celsius(45.5));
    CHECK(run.hottest_start >= celsius(44)); // it goes on there, and not far under it
    CHECK(run.arcs.size() == 120);
    CHECK(run.pausing >= 119.0 * in_si<Time>(15));
}

// 1.5 kW over 40 min are 3.6 MJ. Into 800 kg of 480 J/(kg K) and more that is under 10 K.
TEST_CASE("a heavy casting takes the heat up as a whole") {
    HeatRunSettings heavy = cold_iron();
    heavy.part = in_si<Mass>(800);
    const HeatRun run = heat_run(heavy, {layer_of_rings()});
    REQUIRE(run.end == HeatEnd::done);
    CHECK_THAT(run.boss.value(), WithinRel(800, 1e-9));
    CHECK(run.peak < celsius(33));
    CHECK(run.pausing < 1.01 * 119.0 * in_si<Time>(15));
    const HeatRun alone = heat_run(cold_iron(), {layer_of_rings()});
    CHECK(alone.pausing > 2.0 * run.pausing);
}

// Eight times the mass of one shape is twice its size: eight times the volume, four times the surface.
TEST_CASE("a mesh that stands for a heavier body has the surface of one of its shape") {
    const BossMesh boss = boss_mesh(usual().boss);
    BossMesh heavy = boss;
    stand_for(heavy, 8);
    for (std::size_t i = 0; i < boss.volume.size(); ++i)
        CHECK_THAT(heavy.volume[i], WithinRel(8 * boss.volume[i], 1e-12));
    for (std::size_t i = 0; i < boss.faces.size(); ++i)
        CHECK_THAT(heavy.faces[i].area, WithinRel(4 * boss.faces[i].area, 1e-12));
}
