#include <ringfill/report/draw/dimension_line.hpp>

#include <algorithm>

#include <ringfill/report/draw/label_places.hpp>

namespace ringfill {

void draw_dimension(Svg& svg, const DimensionLine& dimension) {
    constexpr double past = 0.8;    // extension lines go past the line
    constexpr double outside = 2.6; // from the line to a text beside it
    constexpr double stroke = 0.7;  // half of an oblique stroke at an end
    const double y = dimension.y;
    for (const double x : {dimension.from, dimension.to}) {
        svg.line({x, dimension.begin}, {x, y + past}, thin_pen);
        svg.line({x - stroke, y + stroke}, {x + stroke, y - stroke}, outline_pen);
    }
    const double width = text_width(dimension.text);
    const bool fits = width + 2 * past < dimension.to - dimension.from;
    const bool beside = !fits && dimension.to + outside + width < dimension.paper - 1;
    svg.line({dimension.from, y}, {beside ? dimension.to + outside - 0.6 : dimension.to, y}, thin_pen);
    if (beside) {
        svg.text({dimension.to + outside, y + 0.36 * letter_size}, {dimension.text});
        return;
    }
    const double middle = std::clamp((dimension.from + dimension.to) / 2, 1 + width / 2,
                                     std::max(1 + width / 2, dimension.paper - 1 - width / 2));
    svg.text({middle, y - 1.1}, {dimension.text}, Anchor::middle);
}

} // namespace ringfill
