#include <ringfill/heat/start_spot.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

constexpr double spot_pi = std::numbers::pi;
constexpr int midpoints = 12;
/// The metal that the heat lies in is so much hotter than the band, up to a limit [own choice, tried against
/// a three-dimensional reference; section 9].
constexpr double hotter_K = 250;
constexpr double hottest_K = 677 + factor::celsius_zero;

/// Heat that spread for a while from one place: κs [m²] and what goes with it.
class Spread {
  public:
    explicit Spread(double diffused) : diffused_(diffused), scale_(1 / std::sqrt(4 * spot_pi * diffused)) {}

    /// Of one unit, how much lies at a distance [1/m].
    double at(double distance) const { return std::exp(-distance * distance / (4 * diffused_)) * scale_; }

    /// Round the bore from an arc that has gone past the start by `past`, less what is a mean already [1/m].
    double round(double past, double turn) const {
        double sum = -1 / turn;
        for (int j = -2; j <= 1; ++j)
            sum += at(past + j * turn);
        return sum;
    }

    /// Along the bore, with images in its ends [1/m].
    double along(double depth, double ring, double length) const {
        return at(depth - ring) + at(depth + ring) + at(2 * length - depth - ring);
    }

    /// At the surface of a wall of a curved bore, from the surface into the wall [1/m].
    double inwards(double wall, double radius) const {
        const double ratio = wall * wall / diffused_;
        if (diffused_ < wall * wall / 2) {
            const double depth = std::sqrt(spot_pi * diffused_);
            return (1 + 2 * std::exp(-ratio)) / depth / (1 + depth / (2 * radius));
        }
        return (1 + 2 * std::exp(-spot_pi * spot_pi / ratio)) / (wall * (1 + wall / (2 * radius)));
    }

  private:
    double diffused_;
    double scale_;
};

} // namespace

double start_spot_excess(const BossMesh& mesh, const HeatCurves& metal, const std::vector<LaidRing>& rings,
                         double depth, double band_kelvin) {
    const double at = std::min(band_kelvin + hotter_K, hottest_K);
    const double capacity = metal.density * metal.c(at);
    const double diffusivity = metal.lambda(at) / capacity;
    const double radius = mesh.radii.front();
    const double turn = 2 * spot_pi * radius;
    const double overlap = turn / 36;
    double excess = 0;
    for (const LaidRing& ring : rings) {
        const double speed = (turn + overlap) / ring.time;
        double sum = 0;
        for (int i = 0; i < midpoints; ++i) {
            const double u = (i + 0.5) / midpoints;
            const double since = ring.time * u * u; // before the arc went out
            const Spread spread(diffusivity * (ring.ended_ago + since));
            sum += u * spread.round(speed * since - overlap, turn) *
                   spread.along(depth, ring.depth, mesh.length) * spread.inwards(mesh.wall(), radius);
        }
        excess += ring.power / capacity * sum * 2 * ring.time / midpoints;
    }
    return std::max(0.0, excess);
}

} // namespace ringfill
