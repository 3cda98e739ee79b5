#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/fault/fault.hpp>
#include <ringfill/weld/bore_weld.hpp>

#include "fault_figures.hpp"
#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double pi = 3.14159265358979323846;

WornBore named() {
    WornBore bore;
    bore.name = "arm root";
    bore.path = "bores[0]";
    return bore;
}

/// So many layers of the round bead from a radius, over 106 mm.
std::vector<Layer> layers_from(double radius, int layers, TorchPath path = TorchPath::ring) {
    BoreWeld weld;
    weld.build.mean_radius = mm(radius);
    weld.build.welded_length = mm(106);
    weld.bead = round_bead(mm_min(300));
    weld.layering.layers = layers;
    weld.torch_path = path;
    weld.deposition = steel_wire();
    return lay(named(), weld);
}

} // namespace

// Worked by hand: a bead of 8 mm2 with a pitch of 4 mm from 50 mm: 47.958315 and 45.914777 mm after two
// layers; 106 mm take 27 rings of 2 pi r 370/360 each, at 300 mm/min.
TEST_CASE("layers are listed from the skim inwards") {
    const auto layers = layers_from(50, 2);
    REQUIRE(layers.size() == 2);
    CHECK(layers[0].radius_before == mm(50));
    CHECK_THAT(as_mm(layers[0].radius_after), WithinAbs(47.958315, 5e-7));
    CHECK(layers[1].radius_before == layers[0].radius_after);
    CHECK_THAT(as_mm(layers[1].radius_after), WithinAbs(45.914777, 5e-7));
    for (const Layer& layer : layers) {
        const double path = 27 * 2 * pi * as_mm(layer.radius_before) * 370 / 360;
        CHECK(layer.rings == 27);
        CHECK_THAT(as_mm(layer.path), WithinRel(path, 1e-13));
        CHECK_THAT(layer.laid.value(), WithinRel(7850e-9 * 8 * path, 1e-13));
        CHECK_THAT(layer.arc.value(), WithinRel(path / 5, 1e-13));
        CHECK_THAT(layer.torch.value(), WithinRel(5 / (2 * pi * as_mm(layer.radius_before)), 1e-13));
    }
}

TEST_CASE("a helix layer has its turns and one closing ring, with the same torch speed") {
    const auto layers = layers_from(50, 1, TorchPath::helix);
    REQUIRE(layers.size() == 1);
    CHECK(layers[0].rings == 27);
    const double path = 27 * std::hypot(2 * pi * 50, 4.0) + 2 * pi * 50;
    CHECK_THAT(as_mm(layers[0].path), WithinRel(path, 1e-13));
    CHECK_THAT(layers[0].laid.value(), WithinRel(7850e-9 * 8 * path, 1e-13));
    CHECK_THAT(layers[0].torch.value(), WithinRel(5 / (2 * pi * 50), 1e-13));
}

TEST_CASE("a ring that closes while it is laid is refused") {
    try {
        layers_from(10, 4);
        FAIL("not refused");
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        CHECK(in_figures(faulty.faults()) == std::vector<std::string>{"bores[0]: 2.0"});
    }
}
