#include <ringfill/report/draw/end_view.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/draw/labels.hpp>

namespace ringfill {
namespace {

/// Detail A: a sector of the bore at its deepest wear.
struct Sector : EndView {
    double half_angle = 0.62; ///< at most [rad]
    double inner;             ///< radii that it lies between [mm]
    double outer;
    double height; ///< on the paper [mm]

    Sector(const DrawnBore& drawn, double top)
        : inner(drawn.end - std::min(0.12 * (drawn.skim - drawn.end), 0.5 * drawn.end)),
          outer(drawn.detail_outer()) {
        constexpr double band_height = 22;
        constexpr double half_width = 23;
        constexpr double least_height = 31; // room for seven labels
        scale = band_height / (outer - inner);
        centre = {27, top + scale * outer};
        half_angle = std::min(half_angle, std::asin(std::min(1.0, half_width / (scale * outer))));
        const double drop = outer - inner * std::cos(half_angle);
        height = std::max(least_height, scale * std::max(drop, outer - inner));
    }
    PaperPoint edge(double radius) const { return at(radius, half_angle); }

    /// Points of a curve from left to right, by its radius at an angle.
    template <class Radius>
    PaperPoints curve(Radius radius) const {
        return sampled(49, [&](double i) {
            const double angle = half_angle * (2.0 * i / 48 - 1);
            return at(radius(angle), angle);
        });
    }
    PaperPoints arc(double radius) const {
        return curve([radius](double) { return radius; });
    }
    /// The same arc as a single, short command.
    std::string arc_path(double radius) const {
        const std::string r = svg_number(scale * radius);
        return fmt::format("{}A{} {} 0 0 1 {}", open_path({at(radius, -half_angle)}), r, r,
                           svg_point(edge(radius)));
    }
};

PaperPoints between(PaperPoints outer, const PaperPoints& inner) {
    outer.insert(outer.end(), inner.rbegin(), inner.rend());
    return outer;
}

std::vector<Label> labels_of(const Sector& sector, const DrawnBore& drawn, double worn_at_edge) {
    std::vector<Label> labels;
    const auto add = [&](bool is_there, std::string_view text, double radius, int rank) {
        const std::string sized = fmt::format(fmt::runtime(text), drawn.diameter(radius));
        if (is_there)
            labels.push_back({sized, sector.edge(radius), rank});
    };
    add(drawn.detail_has_boss(), "outside of the boss", drawn.outside, 6);
    add(drawn.skimmed, "skim to {}", drawn.skim, 0);
    add(true, drawn.skimmed ? "worn outline" : "worn, welded on as it is", worn_at_edge, 3);
    add(true, "finish {}", drawn.finish, 1);
    for (std::size_t n = 1; n < drawn.layers(); ++n)
        add(drawn.is_labelled(n), fmt::format("layer {} {{}}", n), drawn.layer(n), static_cast<int>(10 + n));
    add(true, "weld to {}", drawn.weld_to, 0);
    add(drawn.is_average(), fmt::format("layer {}, on average {{}}", drawn.layers()), drawn.end, 2);
    add(drawn.passes_target(), "asked for {}", drawn.target, 5);
    return labels;
}

void draw_sector(Svg& svg, const Sector& sector, const DrawnBore& drawn, const PaperPoints& worn) {
    const auto draw_arc = [&](bool is_there, double radius, const Pen& pen) {
        if (is_there)
            svg.path(open_path(sector.arc(radius)), pen);
    };
    const auto wall = drawn.skimmed ? sector.arc(drawn.skim) : worn;
    svg.hatched({between(sector.arc(sector.outer), wall)}, boss_hatching);
    const double spacing = sector.scale * drawn.least_layer();
    svg.hatched({between(wall, sector.arc(drawn.end))}, weld_hatching_between(spacing));
    std::string layers;
    for (std::size_t n = 1; n < drawn.layers(); ++n)
        layers += sector.arc_path(drawn.layer(n));
    svg.path(layers, layer_pen(spacing));
    if (drawn.is_average())
        svg.path(sector.arc_path(drawn.weld_to), removed_pen);
    draw_arc(drawn.passes_target(), drawn.target, removed_pen);
    draw_arc(drawn.detail_has_boss(), drawn.outside, outline_pen);
    svg.path(open_path(worn), drawn.skimmed ? removed_pen : outline_pen);
    draw_arc(drawn.skimmed, drawn.skim, outline_pen);
    draw_arc(true, drawn.end, outline_pen);
    draw_arc(true, drawn.finish, finish_pen);
    for (const double side : {-1.0, 1.0})
        svg.line(sector.at(sector.outer, side * sector.half_angle),
                 sector.at(sector.inner, side * sector.half_angle), chain_pen);
}

} // namespace

double draw_ring_detail(Svg& svg, const DrawnBore& drawn, double top, double view_scale) {
    const Sector sector(drawn, top);
    const auto worn_radius = [&](double angle) {
        return mm(drawn.worn.radius(drawn.deepest.clock + in_si<Angle>(angle)));
    };
    draw_sector(svg, sector, drawn, sector.curve(worn_radius));
    svg.text({1, top - 2.6}, {fmt::format("Detail A, {:.3g} times the view above, turned upright",
                                          sector.scale / view_scale)});
    draw_labels(svg, labels_of(sector, drawn, worn_radius(sector.half_angle)),
                beside_detail(top, sector.height));
    return sector.height;
}

} // namespace ringfill
