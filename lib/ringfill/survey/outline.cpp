#include <ringfill/survey/outline.hpp>

#include <cmath>
#include <numbers>

#include <range/v3/numeric/accumulate.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

constexpr double turn = 2 * std::numbers::pi;

Angle clock_of(std::size_t i, std::size_t count) {
    return in_si<Angle>(turn * static_cast<double>(i) / static_cast<double>(count));
}

} // namespace

Area section(const std::vector<Length>& radii) {
    const Area squares =
        ranges::accumulate(radii | ranges::views::transform([](Length r) -> Area { return r * r; }), Area());
    return std::numbers::pi * squares / static_cast<double>(radii.size());
}

Interpolant::Interpolant(const std::vector<Length>& radii)
    : mean_(ranges::accumulate(radii, Length()) / static_cast<double>(radii.size())) {
    const std::size_t n = radii.size();
    std::vector<double> cosine;
    std::vector<double> sine;
    for (std::size_t k = 0; k < n; ++k) {
        cosine.push_back(std::cos(clock_of(k, n).value()));
        sine.push_back(std::sin(clock_of(k, n).value()));
    }
    for (std::size_t j = 1; 2 * j <= n; ++j) {
        Length a;
        Length b;
        std::size_t at = 0; // j k less whole turns, in integers: each angle is one of the n exact ones
        for (std::size_t k = 0; k < n; ++k) {
            a += radii[k] * cosine[at];
            b += radii[k] * sine[at];
            at = at + j < n ? at + j : at + j - n;
        }
        const bool nyquist = 2 * j == n;
        const double weight = (nyquist ? 1.0 : 2.0) / static_cast<double>(n);
        cosines_.push_back(weight * a);
        sines_.push_back(nyquist ? Length() : Length(weight * b));
    }
}

Length Interpolant::operator()(Angle clock) const {
    // cos and sin of the multiples of the angle by turning one complex number, instead of 2N calls.
    const double step_cos = std::cos(clock.value());
    const double step_sin = std::sin(clock.value());
    double c = 1;
    double s = 0;
    Length radius = mean_;
    for (std::size_t j = 0; j < cosines_.size(); ++j) {
        const double next = c * step_cos - s * step_sin;
        s = s * step_cos + c * step_sin;
        c = next;
        radius += cosines_[j] * c + sines_[j] * s;
    }
    return radius;
}

Extremes extremes(const std::vector<Length>& radii) {
    const ClockRadius first{radii.front(), Angle()};
    Extremes found{first, first};
    const auto consider = [&](Length radius, Angle clock) {
        if (radius > found.largest.radius)
            found.largest = {radius, clock};
        if (radius < found.smallest.radius)
            found.smallest = {radius, clock};
    };
    for (std::size_t i = 1; i < radii.size(); ++i)
        consider(radii[i], clock_of(i, radii.size()));
    const Interpolant outline(radii);
    for (std::size_t i = 0; i < search_angles; ++i)
        consider(outline(clock_of(i, search_angles)), clock_of(i, search_angles));
    return found;
}

} // namespace ringfill
