#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/heat/ring_times.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinRel;

namespace {

/// A bore with a groove and a face, laid in rings or along a helix.
Job job_with(const std::string& path) {
    return testing::job_from(R"({ "format": "ringfill-job/1", "title": "t", "units": "mm",
  "procedures": { "main": { "filler": "steel/ER70S-6", "wire": "1 mm", "gas": "M21", "wire_feed": "8 m/min",
      "current": "180 A", "voltage": "19 V", "travel": "350 mm/min", "path": ")" +
                             path + R"(" } },
  "bores": [{ "name": "pin", "base": "steel/C45", "finish_diameter": "90 mm", "length": "100 mm",
      "boss_diameter": "180 mm", "worn": { "diameter": "93.4 mm" },
      "grooves": [{ "diameter": "98 mm", "width": "4 mm" }],
      "faces": [{ "inner": "95 mm", "outer": "150 mm", "build": "2 mm" }] }] })");
}

BoreWeld weld_of(const std::vector<Layer>& layers, const std::vector<GrooveFill>& grooves = {},
                 const std::vector<FacePad>& faces = {}) {
    BoreWeld weld;
    weld.layers = layers;
    weld.grooves = grooves;
    weld.faces = faces;
    return weld;
}

double sum(const std::vector<Time>& rings) {
    double total = 0;
    for (const Time& ring : rings)
        total += ring.value();
    return total;
}

} // namespace

TEST_CASE("the rings of every pass take as long as the pass, in the sequence of the work") {
    for (const std::string path : {"ring", "helix"}) {
        CAPTURE(path);
        const Job job = job_with(path);
        const BorePlan bore = plan(job, testing::shop()).bores.front();
        const auto passes = ring_times(job.bores[0].grooves, bore);
        REQUIRE(passes.size() == 1 + bore.layers.size() + static_cast<std::size_t>(bore.faces[0].layers));
        CHECK(passes[0].pass == "groove 1");
        CHECK_THAT(sum(passes[0].rings), WithinRel(bore.grooves[0].arc.value(), 1e-9));
        for (std::size_t i = 0; i < bore.layers.size(); ++i) {
            CHECK(passes[1 + i].pass == "bore");
            CHECK(passes[1 + i].layer == static_cast<int>(i + 1));
            CHECK(passes[1 + i].rings.size() ==
                  static_cast<std::size_t>(bore.layers[i].rings) + (path == "helix" ? 1 : 0));
            CHECK_THAT(sum(passes[1 + i].rings), WithinRel(bore.layers[i].arc.value(), 1e-9));
        }
        double faces = 0;
        for (std::size_t i = 1 + bore.layers.size(); i < passes.size(); ++i) {
            CHECK(passes[i].pass == "face 1");
            CHECK(passes[i].rings.front() < passes[i].rings.back()); // from the inside out
            faces += sum(passes[i].rings);
        }
        CHECK_THAT(faces, WithinRel(bore.faces[0].arc.value(), 1e-9));
    }
}

TEST_CASE("the heat of each pass is told under the name of the pass") {
    std::vector<std::string> names;
    const BorePlan bore = plan(job_with("ring"), testing::shop()).bores.front();
    for (const LaidHeat& one : bore.heat.laid)
        names.push_back(one.pass);
    CHECK(names == std::vector<std::string>{"bore", "face 1", "groove 1"});
}

TEST_CASE("far too many rings are not followed") {
    std::vector<Layer> layers(3);
    for (Layer& layer : layers)
        layer.rings = 7'000;
    CHECK(ring_times({}, weld_of(layers)).empty());
}

// By hand: two and a half turns on a floor of 98 mm are three rings of 20 s each; a groove without metal is
// left out.
TEST_CASE("a groove is one layer of whole turns, named by its place in the bore") {
    Groove groove;
    groove.diameter = millimetres(98);
    GrooveFill empty;
    GrooveFill fill;
    fill.volume = in_si<Volume>(1e-6);
    fill.path = in_si<Length>(2.5 * std::numbers::pi * 0.098);
    fill.arc = in_si<Time>(60);
    const auto passes = ring_times({groove, groove}, weld_of({}, {empty, fill}));
    REQUIRE(passes.size() == 1);
    CHECK(passes[0].pass == "groove 2");
    CHECK(passes[0].layer == 1);
    REQUIRE(passes[0].rings.size() == 3);
    CHECK_THAT(passes[0].rings[0].value(), WithinRel(20, 1e-12));
    fill.path = in_si<Length>(2 * std::numbers::pi * 0.098);
    CHECK(ring_times({groove}, weld_of({}, {fill}))[0].rings.size() == 2);
    fill.path = in_si<Length>(2.0005 * std::numbers::pi * 0.098);
    CHECK(ring_times({groove}, weld_of({}, {fill}))[0].rings.size() == 3);
    fill.path = in_si<Length>(0.5 * std::numbers::pi * 0.098);
    CHECK(ring_times({groove}, weld_of({}, {fill}))[0].rings.size() == 1);
}

TEST_CASE("twenty thousand rings are followed, one more is too many") {
    std::vector<Layer> layers(2);
    layers[0].rings = 19'000;
    layers[1].rings = 1'000;
    CHECK(ring_times({}, weld_of(layers)).size() == 2);
    Groove groove;
    groove.diameter = millimetres(98);
    CHECK(ring_times({groove}, weld_of(layers, {GrooveFill()})).size() == 2); // empty
    GrooveFill fill;
    fill.volume = in_si<Volume>(1e-6);
    fill.path = std::numbers::pi * groove.diameter;
    CHECK(ring_times({groove}, weld_of(layers, {fill})).empty());
    layers[1].rings = 1'001;
    CHECK(ring_times({}, weld_of(layers)).empty());
}

// By hand: 15 000 rings of the bore and 10 x 1000 of a face.
TEST_CASE("the rings of faces count among those followed") {
    std::vector<Layer> layers(1);
    layers[0].rings = 15'000;
    FacePad face;
    face.layers = 10;
    face.rings = 1'000;
    CHECK(ring_times({}, weld_of(layers, {}, {face})).empty());
    face.layers = 5;
    CHECK(ring_times({}, weld_of(layers, {}, {face})).size() == 6);
}
