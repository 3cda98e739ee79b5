#include <cmath>

#include "heat/asked_case.hpp"

namespace ringfill::testing {

double method_b_by_hand(double cet, double wall_mm, double hydrogen, double heat_kj_mm) {
    const double c = std::clamp(cet, 0.20, 0.50);
    const double d = std::clamp(wall_mm, 10.0, 90.0);
    const double h = std::max(hydrogen, 1.0);
    const double q = std::clamp(heat_kj_mm, 0.5, 4.0);
    return 697 * c + 160 * std::tanh(d / 35) + 62 * std::pow(h, 0.35) + (53 * c - 32) * q - 328;
}

} // namespace ringfill::testing
