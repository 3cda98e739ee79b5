#include <ringfill/report/draw/ring_detail.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/hatch.hpp>
#include <ringfill/report/draw/label_places.hpp>

namespace ringfill {
namespace {

constexpr double band_height = 22;
constexpr double half_width = 23;
constexpr double middle = 27;   ///< x of the middle of the sector
constexpr double widest = 0.62; ///< half angle at most [rad]
constexpr LabelColumn column{53.5, 84.3, 0, 0};
constexpr double least_height = 31; ///< room for seven labels

/// The sector on the paper: its middle line points up.
struct Fan {
    const RingDetail& detail;
    double centre_y;

    PaperPoint at(double radius, double angle) const {
        return {middle + detail.scale * radius * std::sin(angle),
                centre_y - detail.scale * radius * std::cos(angle)};
    }
    PaperPoint edge(double radius) const { return at(radius, detail.half_angle); }

    /// Points of a curve from left to right.
    template <class Radius>
    std::vector<PaperPoint> curve(Radius radius) const {
        constexpr int steps = 48;
        std::vector<PaperPoint> points;
        for (int i = 0; i <= steps; ++i) {
            const double angle = detail.half_angle * (2.0 * i / steps - 1);
            points.push_back(at(radius(angle), angle));
        }
        return points;
    }
    /// The same in one command, which is short.
    std::string arc_path(double radius) const {
        const PaperPoint from = at(radius, -detail.half_angle);
        const PaperPoint to = edge(radius);
        const std::string r = svg_number(detail.scale * radius);
        return fmt::format("M{},{}A{} {} 0 0 1 {},{}", svg_number(from.x), svg_number(from.y), r, r,
                           svg_number(to.x), svg_number(to.y));
    }
    std::vector<PaperPoint> arc(double radius) const {
        return curve([radius](double) { return radius; });
    }
};

std::vector<PaperPoint> between(std::vector<PaperPoint> outer, const std::vector<PaperPoint>& inner) {
    outer.insert(outer.end(), inner.rbegin(), inner.rend());
    return outer;
}

std::vector<Label> labels_of(const Fan& fan, const RingSection& section, double worn_at_edge,
                             UnitSystem units) {
    std::vector<Label> labels;
    if (section.boss && *section.boss <= fan.detail.outer)
        labels.push_back({"outside of the boss", fan.edge(*section.boss), 6});
    if (section.skimmed)
        labels.push_back({"skim to " + diameter_text(section.skim, units), fan.edge(section.skim), 0});
    labels.push_back(
        {section.skimmed ? "worn outline" : "worn, welded on as it is", fan.edge(worn_at_edge), 3});
    labels.push_back({"finish " + diameter_text(section.finish, units), fan.edge(section.finish), 1});
    const int step = labelled_layers_step(section.layers.size());
    for (std::size_t n = 1; n < section.layers.size(); ++n)
        if (n == 1 || n % static_cast<std::size_t>(step) == 0)
            labels.push_back({fmt::format("layer {} {}", n, diameter_text(section.layers[n - 1], units)),
                              fan.edge(section.layers[n - 1]), static_cast<int>(10 + n)});
    labels.push_back({"weld to " + diameter_text(section.weld_to, units), fan.edge(section.weld_to), 0});
    if (section.is_average())
        labels.push_back(
            {fmt::format("layer {}, on average {}", section.layers.size(), diameter_text(section.end, units)),
             fan.edge(section.end), 2});
    if (section.passes_target())
        labels.push_back({"asked for " + diameter_text(section.target, units), fan.edge(section.target), 5});
    return labels;
}

} // namespace

RingDetail ring_detail(const RingSection& section) {
    const double band = section.skim - section.end;
    RingDetail detail{};
    detail.outer = std::min(section.skim + 0.3 * band, section.outside());
    detail.inner = section.end - std::min(0.12 * band, 0.5 * section.end);
    detail.scale = band_height / (detail.outer - detail.inner);
    detail.half_angle =
        std::min(widest, std::asin(std::min(1.0, half_width / (detail.scale * detail.outer))));
    const double drop = detail.outer - detail.inner * std::cos(detail.half_angle);
    detail.height = std::max(least_height, detail.scale * std::max(drop, detail.outer - detail.inner));
    return detail;
}

void draw_ring_detail(Svg& svg, const RingSection& section, const RingDetail& detail, double top,
                      UnitSystem units) {
    const Fan fan{detail, top + detail.scale * detail.outer};
    const auto worn_radius = [&](double angle) {
        return 1e3 * section.worn.radius(section.deepest.clock + in_si<Angle>(angle)).value();
    };
    const auto worn = fan.curve(worn_radius);
    const auto wall = section.skimmed ? fan.arc(section.skim) : worn;
    const auto end = fan.arc(section.end);
    svg.path(hatch({between(fan.arc(detail.outer), wall)}, boss_hatching), hatch_pen);
    const double spacing = detail.scale * least_layer(section);
    svg.path(hatch({between(wall, end)}, weld_hatching_between(spacing)), hatch_pen);
    std::string layers;
    for (std::size_t n = 0; n + 1 < section.layers.size(); ++n)
        layers += fan.arc_path(section.layers[n]);
    svg.path(layers, layer_pen(spacing));
    if (section.is_average())
        svg.path(fan.arc_path(section.weld_to), removed_pen);
    if (section.passes_target())
        svg.path(open_path(fan.arc(section.target)), removed_pen);
    if (section.boss && *section.boss <= detail.outer)
        svg.path(open_path(fan.arc(*section.boss)), outline_pen);
    svg.path(open_path(worn), section.skimmed ? removed_pen : outline_pen);
    if (section.skimmed)
        svg.path(open_path(wall), outline_pen);
    svg.path(open_path(end), outline_pen);
    svg.path(open_path(fan.arc(section.finish)), finish_pen);
    for (const double side : {-1.0, 1.0})
        svg.line(fan.at(detail.outer, side * detail.half_angle),
                 fan.at(detail.inner, side * detail.half_angle), chain_pen);
    LabelColumn beside = column;
    beside.top = top;
    beside.bottom = top + detail.height;
    draw_labels(svg, labels_of(fan, section, worn_radius(detail.half_angle), units), beside);
}

} // namespace ringfill
