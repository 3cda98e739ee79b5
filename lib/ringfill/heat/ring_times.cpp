#include <ringfill/heat/ring_times.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include <range/v3/view/join.hpp>

#include <ringfill/weld/bead.hpp>

namespace ringfill {
namespace {

/// Turns of a groove on its floor; none where there is nothing to fill.
std::size_t groove_rings(const Groove& groove, const GrooveFill& fill) {
    if (!fill.is_filled())
        return 0;
    const double turns = (fill.path / (std::numbers::pi * groove.diameter)).value();
    return static_cast<std::size_t>(std::clamp<double>(std::ceil(turns - 1e-9), 1, 1e9));
}

RingPass groove_pass(std::size_t i, const Groove& groove, const GrooveFill& fill, Length length) {
    const std::size_t rings = groove_rings(groove, fill);
    const Length from = std::max(Length(), (length - groove.width) / 2.0);
    return {fmt::format("groove {}", i + 1),
            1,
            std::vector<Time>(rings, fill.arc / static_cast<double>(rings)),
            from,
            length - from,
            false,
            false,
            fill.path / fill.arc};
}

RingPass layer_pass(std::size_t i, const Layer& layer, const BoreWeld& weld, Length length) {
    RingPass pass{"bore", static_cast<int>(i + 1), {}, Length(), length};
    pass.is_helix = weld.torch_path == TorchPath::helix;
    const auto rings = static_cast<std::size_t>(layer.rings);
    pass.travel = layer.path / layer.arc;
    if (!pass.is_helix) {
        pass.rings.assign(rings, layer.arc / static_cast<double>(rings));
        return pass;
    }
    const double round = 2 * std::numbers::pi * layer.radius_before.value();
    pass.rings.assign(rings, in_si<Length>(std::hypot(round, weld.bead.pitch.value())) / weld.bead.travel);
    pass.rings.push_back(in_si<Length>(round) / weld.bead.travel); // the closing ring
    return pass;
}

RingPass face_pass(std::size_t i, int layer, const FacePad& face, Length length) {
    const Length band = std::min(face.bead.pitch, length);
    const Length from = i == 0 ? Length() : length - band;
    RingPass pass{fmt::format("face {}", i + 1), layer, {}, from, from + band, false};
    pass.travel = face.bead.travel;
    for (int ring = 0; ring < face.rings; ++ring)
        pass.rings.push_back(ring_path(face.first_radius + static_cast<double>(ring) * face.bead.pitch) /
                             face.bead.travel);
    return pass;
}

} // namespace

std::pair<Length, Length> heated_band(const RingPass& pass, std::size_t ring) {
    if (!pass.side_by_side)
        return {pass.from, pass.to};
    const auto stitches = static_cast<std::size_t>(pass.stitches_a_ring);
    const std::size_t bands =
        std::max<std::size_t>(1, pass.rings.size() / stitches - (pass.is_helix ? 1 : 0));
    const Length width = (pass.to - pass.from) / static_cast<double>(bands);
    const Length from = pass.from + static_cast<double>(std::min(ring / stitches, bands - 1)) * width;
    return {from, from + width};
}

std::vector<RingPass> ring_times(const WornBore& bore, const BoreWeld& weld) {
    const std::vector<Groove>& grooves = bore.grooves;
    std::size_t rings = 0;
    for (const Layer& layer : weld.layers)
        rings += static_cast<std::size_t>(layer.rings);
    for (const FacePad& face : weld.faces)
        rings += static_cast<std::size_t>(face.layers) * static_cast<std::size_t>(face.rings);
    for (std::size_t i = 0; i < grooves.size(); ++i)
        rings += groove_rings(grooves[i], weld.grooves[i]);
    if (rings > most_rings_followed)
        return {};
    std::vector<RingPass> passes;
    for (std::size_t i = 0; i < grooves.size(); ++i)
        if (weld.grooves[i].is_filled())
            passes.push_back(groove_pass(i, grooves[i], weld.grooves[i], bore.length));
    for (std::size_t i = 0; i < weld.layers.size(); ++i)
        passes.push_back(layer_pass(i, weld.layers[i], weld, bore.length));
    for (std::size_t i = 0; i < weld.faces.size(); ++i)
        for (int layer = 1; layer <= weld.faces[i].layers; ++layer)
            passes.push_back(face_pass(i, layer, weld.faces[i], bore.length));
    return passes;
}

std::vector<std::vector<RingPass>> if_followed(std::vector<std::vector<RingPass>> bores) {
    std::size_t rings = 0;
    for (const RingPass& pass : bores | ranges::views::join)
        rings += pass.rings.size();
    if (rings > most_rings_of_a_job)
        bores.assign(bores.size(), {});
    return bores;
}

} // namespace ringfill
