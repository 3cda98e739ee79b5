#pragma once

#include <string>

#include <ringfill/report/svg.hpp>

namespace ringfill {

/// A horizontal dimension under what it measures.
struct DimensionLine {
    double from = 0; ///< x of its ends [mm of paper]
    double to = 0;
    double y = 0;
    double begin = 0; ///< y where its extension lines begin
    std::string text;
};

/// Draws a dimension, its text over the line, or to the right of it where the line is too short. The text
/// stands within 3.6 mm over the line.
void draw_dimension(Svg& svg, const DimensionLine& dimension);

} // namespace ringfill
