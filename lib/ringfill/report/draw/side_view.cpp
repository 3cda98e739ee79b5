#include <ringfill/report/draw/side_view.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/hatch.hpp>
#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// Beads are drawn one by one from this size on [mm of paper].
constexpr double least_bead_width = 1.0;
constexpr double least_bead_height = 0.6;

/// Rings that begin before a depth.
int rings_before(const RingRow& row, double to) {
    return std::clamp(static_cast<int>(std::floor((to - row.begin) / row.pitch + 1e-6)), 0, row.rings);
}

/// One boundary as parabolas from valley to valley. Relative commands: 40 layers of 100 rings stay small.
std::string scallops(const SideFrame& frame, const RingRow& row, int rings, double radius) {
    const PaperPoint from = frame.at(row.begin, radius + 2 * row.valley / 3); // its mean height is the radius
    const double step = frame.scale * row.pitch;
    const double control = 2 * frame.scale * row.valley;
    std::string path = open_path({from});
    const std::string one =
        fmt::format("q{},{} {},0", svg_number(step / 2, 4), svg_number(control, 3), svg_number(step, 4));
    for (int i = 0; i < rings; ++i)
        path += one;
    return path;
}

} // namespace

RingRow ring_row(const WornBore& bore, const BorePlan& plan) {
    return {-mm(bore.overhang), mm(plan.bead.pitch), plan.layers.front().rings, mm(plan.bead.valley)};
}

double worn_at(const RingSection& section, double depth) {
    return mm(section.worn.radius(section.deepest.clock, millimetres(std::max(0.0, depth))));
}

double wall_at(const RingSection& section, double depth) {
    return section.skimmed ? section.skim : worn_at(section, depth);
}

std::vector<PaperPoint> wall_line(const SideFrame& frame, const RingSection& section, double from,
                                  double to) {
    const int steps = section.skimmed ? 1 : 100;
    std::vector<PaperPoint> points;
    for (int i = 0; i <= steps; ++i) {
        const double depth = from + (to - from) * i / steps;
        points.push_back(frame.at(depth, wall_at(section, depth)));
    }
    return points;
}

LayerPaths layer_paths(const SideFrame& frame, const RingSection& section, const RingRow& row, double to) {
    LayerPaths paths{{}, {}, frame.scale * least_layer(section)};
    const bool beads = frame.scale * row.pitch >= least_bead_width && paths.spacing >= least_bead_height;
    const int rings = rings_before(row, to);
    for (std::size_t n = 0; n < section.layers.size(); ++n) {
        const double radius = section.layers[n];
        const std::string one =
            beads ? scallops(frame, row, rings, radius)
                  : open_path({frame.at(row.begin, radius), frame.at(std::min(to, row.end()), radius)});
        (n + 1 < section.layers.size() ? paths.between : paths.last) += one;
    }
    return paths;
}

void draw_weld(Svg& svg, const SideFrame& frame, const RingSection& section, const RingRow& row, double to,
               double length) {
    auto shape = wall_line(frame, section, row.begin, to);
    const auto wall = shape;
    shape.push_back(frame.at(to, section.end));
    shape.push_back(frame.at(row.begin, section.end));
    const LayerPaths layers = layer_paths(frame, section, row, to);
    svg.cover(shape, {0, {}});
    svg.path(hatch({shape}, weld_hatching_between(layers.spacing)), hatch_pen);
    svg.path(layers.between, layer_pen(layers.spacing));
    svg.path(layers.last, outline_pen);
    svg.path(open_path(wall), outline_pen);
    for (const double end : {row.begin, row.end()})
        if (end <= to)
            svg.line(frame.at(end, wall_at(section, end)), frame.at(end, section.end), outline_pen);
    const double inside = std::min(to, length);
    if (section.skimmed) {
        constexpr int steps = 60;
        std::vector<PaperPoint> worn;
        for (int i = 0; i <= steps; ++i)
            worn.push_back(frame.at(inside * i / steps, worn_at(section, inside * i / steps)));
        svg.path(open_path(worn), removed_pen);
    }
    svg.line(frame.at(0, section.finish), frame.at(inside, section.finish), finish_pen);
}

void draw_ring_numbers(Svg& svg, const SideFrame& frame, const RingSection& section, const RingRow& row,
                       double to, double y) {
    const int rings = rings_before(row, to);
    const double room = (text_width(fmt::format("{}", rings)) + 0.9) / (frame.scale * row.pitch);
    for (const int n : numbers_shown(rings, room)) {
        const PaperPoint bead = frame.at(row.begin + (n - 0.5) * row.pitch, section.end);
        svg.line({bead.x, bead.y + 0.6}, {bead.x, y - letter_rise + 0.3}, thin_pen);
        svg.text({bead.x, y}, {fmt::format("{}", n)}, Anchor::middle);
    }
}

} // namespace ringfill
