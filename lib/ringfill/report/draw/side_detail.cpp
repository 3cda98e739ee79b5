#include <ringfill/report/draw/side_detail.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/hatch.hpp>
#include <ringfill/report/draw/label_places.hpp>

namespace ringfill {
namespace {

constexpr double left = 3;
constexpr double width = 46;
constexpr double band_height = 24;
constexpr double number_row = 5.5;
constexpr double least_height = 31;
constexpr double least_rings = 3;
constexpr LabelColumn column{53.5, 84.3, 0, 0};

std::vector<Label> labels_of(const SideFrame& frame, const RingSection& section, double to,
                             UnitSystem units) {
    std::vector<Label> labels;
    labels.push_back(
        {section.skimmed ? "wall, skimmed" : "wall, worn as it is", frame.at(to, wall_at(section, to)), 3});
    if (section.skimmed)
        labels.push_back({"worn surface", frame.at(to, worn_at(section, to)), 4});
    labels.push_back({"finish " + diameter_text(section.finish, units), frame.at(to, section.finish), 1});
    const auto count = section.layers.size();
    const auto step = static_cast<std::size_t>(labelled_layers_step(count));
    for (std::size_t n = 1; n <= count; ++n)
        if (n == 1 || n == count || n % step == 0) {
            const double before = n == 1 ? wall_at(section, to) : section.layers[n - 2];
            labels.push_back({fmt::format("layer {}", n), frame.at(to, (before + section.layers[n - 1]) / 2),
                              n == 1 || n == count ? 2 : static_cast<int>(10 + n)});
        }
    return labels;
}

} // namespace

SideDetail side_detail(const RingSection& section, const RingRow& row) {
    const double band = section.skim - section.end;
    SideDetail detail{};
    detail.outer = std::min(section.skim + 0.3 * band, section.outside());
    detail.scale = std::min(band_height / (detail.outer - section.end), width / (least_rings * row.pitch));
    const double rings = std::floor(width / (detail.scale * row.pitch) + 1e-9); // whole ones
    detail.to = std::min(row.end(), row.begin + rings * row.pitch);
    detail.height = std::max(least_height, detail.scale * (detail.outer - section.end) + number_row);
    return detail;
}

void draw_side_detail(Svg& svg, const RingSection& section, const RingRow& row, const SideDetail& detail,
                      double top, double length, UnitSystem units) {
    const SideFrame frame{detail.scale, left - detail.scale * row.begin, top + detail.scale * detail.outer};
    const double inside = std::min(detail.to, length);
    auto boss = wall_line(frame, section, 0, inside);
    boss.push_back(frame.at(inside, detail.outer));
    boss.push_back(frame.at(0, detail.outer));
    svg.path(hatch({boss}, boss_hatching), hatch_pen);
    svg.line(frame.at(0, section.skim), frame.at(0, detail.outer), outline_pen);
    if (inside == length)
        svg.line(frame.at(length, section.skim), frame.at(length, detail.outer), outline_pen);
    if (section.boss && *section.boss <= detail.outer)
        svg.line(frame.at(0, detail.outer), frame.at(inside, detail.outer), outline_pen);
    draw_weld(svg, frame, section, row, detail.to, length);
    if (detail.to < row.end())
        svg.line(frame.at(detail.to, detail.outer), frame.at(detail.to, section.end), chain_pen);
    const double below = top + detail.scale * (detail.outer - section.end);
    draw_ring_numbers(svg, frame, section, row, detail.to, below + number_row - 1);
    LabelColumn beside = column;
    beside.top = top;
    beside.bottom = top + detail.height;
    draw_labels(svg, labels_of(frame, section, detail.to, units), beside);
}

} // namespace ringfill
