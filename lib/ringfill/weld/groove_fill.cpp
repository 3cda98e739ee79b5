#include <ringfill/weld/groove_fill.hpp>

#include <numbers>

#include <ringfill/weld/path.hpp>

namespace ringfill {

GrooveFill fill_groove(const Groove& groove, Length bore_radius, const Bead& unscaled,
                       const Deposition& deposition) {
    const Length r = groove.diameter / 2.0;
    if (r <= bore_radius)
        return {};
    GrooveFill fill;
    fill.volume = std::numbers::pi * (r * r - bore_radius * bore_radius) * groove.width;
    fill.path = fill.volume / unscaled.section;
    fill.laid = deposition.density * fill.volume;
    fill.arc = fill.path / unscaled.travel;
    fill.travel = unscaled.travel;
    fill.torch = torch_speed(unscaled.travel, r);
    return fill;
}

} // namespace ringfill
