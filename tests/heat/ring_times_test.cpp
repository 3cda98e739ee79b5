#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/heat/ring_times.hpp>
#include <ringfill/units/metric.hpp>

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

WornBore bore_with(const std::vector<Groove>& grooves) {
    WornBore bore;
    bore.length = millimetres(100);
    bore.grooves = grooves;
    return bore;
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
        const auto passes = ring_times(job.bores[0], bore);
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
    CHECK(ring_times(bore_with({}), weld_of(layers)).empty());
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
    const auto passes = ring_times(bore_with({groove, groove}), weld_of({}, {empty, fill}));
    REQUIRE(passes.size() == 1);
    CHECK(passes[0].pass == "groove 2");
    CHECK(passes[0].layer == 1);
    REQUIRE(passes[0].rings.size() == 3);
    CHECK_THAT(passes[0].rings[0].value(), WithinRel(20, 1e-12));
    fill.path = in_si<Length>(2 * std::numbers::pi * 0.098);
    CHECK(ring_times(bore_with({groove}), weld_of({}, {fill}))[0].rings.size() == 2);
    fill.path = in_si<Length>(2.0005 * std::numbers::pi * 0.098);
    CHECK(ring_times(bore_with({groove}), weld_of({}, {fill}))[0].rings.size() == 3);
    fill.path = in_si<Length>(0.5 * std::numbers::pi * 0.098);
    CHECK(ring_times(bore_with({groove}), weld_of({}, {fill}))[0].rings.size() == 1);
}

TEST_CASE("twenty thousand rings are followed, one more is too many") {
    std::vector<Layer> layers(2);
    layers[0].rings = 19'000;
    layers[1].rings = 1'000;
    CHECK(ring_times(bore_with({}), weld_of(layers)).size() == 2);
    Groove groove;
    groove.diameter = millimetres(98);
    CHECK(ring_times(bore_with({groove}), weld_of(layers, {GrooveFill()})).size() == 2); // empty
    GrooveFill fill;
    fill.volume = in_si<Volume>(1e-6);
    fill.path = std::numbers::pi * groove.diameter;
    CHECK(ring_times(bore_with({groove}), weld_of(layers, {fill})).empty());
    layers[1].rings = 1'001;
    CHECK(ring_times(bore_with({}), weld_of(layers)).empty());
}

// By hand: 15 000 rings of the bore and 10 x 1000 of a face.
TEST_CASE("the rings of faces count among those followed") {
    std::vector<Layer> layers(1);
    layers[0].rings = 15'000;
    FacePad face;
    face.layers = 10;
    face.rings = 1'000;
    CHECK(ring_times(bore_with({}), weld_of(layers, {}, {face})).empty());
    face.layers = 5;
    CHECK(ring_times(bore_with({}), weld_of(layers, {}, {face})).size() == 6);
}

// By hand: 100 mm in 4 rings; a helix of 4 turns and its closing ring on the last of them; a face of one
// pitch at its end; a groove of 4 mm at mid length.
TEST_CASE("each ring heats its part of the bore") {
    const auto band = [](const RingPass& pass, std::size_t ring) {
        const auto [from, to] = heated_band(pass, ring);
        return std::pair(mm(from), mm(to));
    };
    const Length length = millimetres(100);
    RingPass pass{"bore", 1, std::vector<Time>(4), Length(), length};
    CHECK_THAT(band(pass, 1).first, WithinRel(25, 1e-12));
    CHECK_THAT(band(pass, 3).second, WithinRel(100, 1e-12));
    pass.rings.resize(5);
    pass.is_helix = true;
    CHECK_THAT(band(pass, 1).first, WithinRel(25, 1e-12));
    CHECK(band(pass, 4) == band(pass, 3));
    Groove groove;
    groove.diameter = millimetres(98);
    groove.width = millimetres(4);
    GrooveFill fill;
    fill.volume = in_si<Volume>(1e-6);
    fill.path = 2 * std::numbers::pi * groove.diameter;
    FacePad face;
    face.layers = 1;
    face.rings = 2;
    face.bead.pitch = millimetres(5);
    const auto passes = ring_times(bore_with({groove}), weld_of({}, {fill}, {face, face}));
    REQUIRE(passes.size() == 3);
    for (const std::size_t ring : {std::size_t{0}, std::size_t{1}}) {
        CHECK_THAT(band(passes[0], ring).first, WithinRel(48, 1e-12));
        CHECK_THAT(band(passes[0], ring).second, WithinRel(52, 1e-12));
        CHECK(band(passes[1], ring).first == 0);
        CHECK_THAT(band(passes[1], ring).second, WithinRel(5, 1e-12));
        CHECK_THAT(band(passes[2], ring).first, WithinRel(95, 1e-12));
        CHECK_THAT(band(passes[2], ring).second, WithinRel(100, 1e-12));
    }
}
