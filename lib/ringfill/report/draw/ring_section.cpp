#include <ringfill/report/draw/ring_section.hpp>

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include <ringfill/report/draw/label_places.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {

RingSection ring_section(const WornBore& bore, const BorePlan& plan) {
    RingSection section{WornOutline(bore, plan.survey),
                        plan.build.skimmed,
                        mm(plan.build.skim_radius),
                        mm(plan.build.finish_radius),
                        mm(plan.build.weld_to_radius),
                        mm(plan.layering.end_radius),
                        mm(plan.layers.back().radius_after),
                        {},
                        std::nullopt,
                        plan.survey.largest};
    for (const Layer& layer : plan.layers)
        section.layers.push_back(mm(layer.radius_after));
    if (bore.boss_diameter)
        section.boss = mm(*bore.boss_diameter) / 2;
    return section;
}

double least_layer(const RingSection& section) {
    double before = section.skim;
    double least = before;
    for (const double radius : section.layers) {
        least = std::min(least, before - radius);
        before = radius;
    }
    return std::max(least, 0.0);
}

std::string length_text(Length length, UnitSystem units) {
    return held_together(show(length, units));
}

std::string diameter_text(double radius_mm, UnitSystem units) {
    return held_together("Ø " + show(millimetres(2 * radius_mm), units));
}

std::string clock_text(Angle clock) {
    const int minutes = static_cast<int>(std::lround(degrees(clock) * 2)) % 720; // an hour is 30°
    const int hour = minutes / 60;
    return held_together(fmt::format("{} ({}:{:02})", show(clock), hour == 0 ? 12 : hour, minutes % 60));
}

Pen layer_pen(double spacing) {
    return {std::clamp(0.3 * spacing, 0.04, thin_pen.width), {}};
}

Pen hole_pen(bool goes_through, double width) {
    if (!goes_through)
        return removed_pen;
    return width < 1.5 ? thin_pen : outline_pen;
}

int labelled_layers_step(std::size_t layers) {
    constexpr std::size_t most = 4;
    for (int decade = 1;; decade *= 10)
        for (const int part : {1, 2, 5})
            if (layers / static_cast<std::size_t>(part * decade) <= most)
                return part * decade;
}

std::string sizes_in_words(const RingSection& section, UnitSystem units) {
    std::string text = section.skimmed ? fmt::format("Skim to {}. ", diameter_text(section.skim, units))
                                       : "No skim: the weld goes on the worn surface as it is. ";
    text += fmt::format("{} {} to {}", section.layers.size(), section.layers.size() == 1 ? "layer" : "layers",
                        diameter_text(section.weld_to, units));
    if (section.is_average())
        text += fmt::format(" at the deepest wear, on average to {}", diameter_text(section.end, units));
    if (section.passes_target())
        text += fmt::format(", past the {} asked for", diameter_text(section.target, units));
    return text + fmt::format("; finish {}.", diameter_text(section.finish, units));
}

} // namespace ringfill
