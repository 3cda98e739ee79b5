#include <ringfill/heat/surface_loss.hpp>

#include <cmath>

namespace ringfill {

double bore_emissivity(double depth, double length, double diameter) {
    const auto sight = [&](double away) {
        const double x = away / diameter;
        return (x * x + 0.5) / std::sqrt(x * x + 1) - x;
    };
    const double view = sight(depth) + sight(length - depth);
    // Deep in a long bore the difference of two like numbers may vanish.
    return view > 0 ? 1 / (1 / scaled_emissivity - 1 + 1 / view) : 0;
}

} // namespace ringfill
