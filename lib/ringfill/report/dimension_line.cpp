#include <ringfill/report/dimension_line.hpp>

#include <ringfill/report/label_places.hpp>

namespace ringfill {

void draw_dimension(Svg& svg, const DimensionLine& dimension) {
    constexpr double past = 0.8;   // extension lines go past the line
    constexpr double stroke = 0.7; // half of an oblique stroke at an end
    const double y = dimension.y;
    for (const double x : {dimension.from, dimension.to}) {
        svg.line({x, dimension.begin}, {x, y + past}, thin_pen);
        svg.line({x - stroke, y + stroke}, {x + stroke, y - stroke}, outline_pen);
    }
    const double width = text_width(dimension.text);
    const bool fits = width + 2 * past < dimension.to - dimension.from;
    const double end = fits ? dimension.to : dimension.to + 2;
    svg.line({dimension.from, y}, {end, y}, thin_pen);
    if (fits)
        svg.text({(dimension.from + dimension.to) / 2, y - 0.9}, {dimension.text}, Anchor::middle);
    else
        svg.text({end + 0.6, y + 0.36 * letter_size}, {dimension.text});
}

} // namespace ringfill
