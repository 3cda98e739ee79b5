#include <catch2/catch.hpp>

#include <cmath>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr double pi = 3.14159265358979323846;

/// Wire of a bore's own layers, their trims included.
double own_wire(const BorePlan& bore) {
    double laid = 0;
    for (const Layer& layer : bore.layers)
        laid += layer.laid.value();
    return laid / bore.deposition.efficiency +
           0.1 * static_cast<double>(bore.layers.size()) * bore.deposition.linear_mass.value();
}

/// What rounding up to whole rings may have laid too much: one ring a layer; of a helix its closing ring and
/// the pitch's share of its turns besides, which fall with the bead.
double rounding(const BorePlan& bore) {
    double length = 0;
    for (const Layer& layer : bore.layers) {
        const double circle = 2 * pi * layer.radius_before.value();
        length += circle * 370 / 360;
        if (bore.torch_path == TorchPath::helix)
            length += circle + layer.rings * (std::hypot(circle, bore.bead.pitch.value()) - circle);
    }
    return length * bore.bead.section.value() * bore.deposition.density.value() / bore.deposition.efficiency;
}

} // namespace

// The volume that n layers fill grows with the radius they start from, at a fixed scale and when the scale
// ends them on the same radius; only whole rings can take back, by less than one a layer. Welded on the
// surface as it is, the layers are counted from r_max and laid from the mean radius, which may shift a
// thousandth of them where one is added.
TEST_CASE("deeper wear never takes fewer layers, less kept metal or a smaller ring, nor less wire but for a "
          "ring a layer") {
    constexpr double steps[] = {0.001, 0.01, 0.07, 0.3, 1.1};
    for (const std::uint64_t seed : seeds_for(3)) {
        const double by = steps[seed / seed_step % std::size(steps)];
        INFO("seed " << seed << ", " << by << " mm deeper");
        const Sketch sketch = random_sketch(seed);
        const Plan before = planned(sketch);
        const Plan after = planned(worn_deeper(sketch, by));
        REQUIRE(before.bores.size() == after.bores.size());
        for (std::size_t i = 0; i < before.bores.size(); ++i) {
            INFO("bore " << i);
            const BorePlan& was = before.bores[i];
            const BorePlan& is = after.bores[i];
            REQUIRE(is.survey.largest.radius > was.survey.largest.radius);
            REQUIRE(is.survey.worn_volume > was.survey.worn_volume);
            REQUIRE(is.layering.layers >= was.layering.layers);
            REQUIRE(is.metal.kept > was.metal.kept);
            REQUIRE(is.build.ring_volume > was.build.ring_volume);
            const double shift = was.build.skimmed ? 1e-9 : 1e-3;
            REQUIRE(own_wire(is) >= own_wire(was) * (1 - shift) - rounding(was));
            REQUIRE(is.faces.size() == was.faces.size());
            for (std::size_t f = 0; f < was.faces.size(); ++f)
                REQUIRE(is.faces[f].laid == was.faces[f].laid);
            for (std::size_t g = 0; g < was.grooves.size(); ++g)
                REQUIRE(is.grooves[g].volume <= was.grooves[g].volume);
        }
    }
}
