#pragma once

#include <string>

#include <ringfill/report/draw/svg.hpp>

namespace ringfill {

/// A horizontal dimension under what it measures.
struct DimensionLine {
    double from = 0; ///< x of its ends [mm of paper]
    double to = 0;
    double y = 0;
    double begin = 0;  ///< y where its extension lines begin
    double paper = 85; ///< width of the drawing
    std::string text;
};

/// Draws a dimension, its text over the line, or to the right of it where the line is too short and there is
/// room. The text stands between 4.1 mm over the line and 2 mm under it.
void draw_dimension(Svg& svg, const DimensionLine& dimension);

} // namespace ringfill
