#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// A point on the paper [mm], x to the right, y down.
struct PaperPoint {
    double x = 0;
    double y = 0;
};
using PaperPoints = std::vector<PaperPoint>;

/// Every drawing is this wide [mm of paper].
inline constexpr double paper_width = 85;

/// A number in a drawing, at most so many decimals, without zeros at its end; 0 never has a sign. Throws
/// std::logic_error when it is not finite.
std::string svg_number(double value, int decimals = 3);

/// A line as ISO 128 draws it: width [mm of paper], and lengths of dashes and gaps, empty for a full line.
struct Pen {
    double width;
    std::string_view dashes;
};

inline constexpr Pen no_pen{0, {}};
inline constexpr Pen outline_pen{0.5, {}};             ///< an edge that is seen
inline constexpr Pen thin_pen{0.25, {}};               ///< dimension, leader, layer
inline constexpr Pen hatch_pen{0.13, {}};              ///< cut metal
inline constexpr Pen chain_pen{0.18, "4 0.8 0.6 0.8"}; ///< an axis
inline constexpr Pen removed_pen{0.3, "0.9 0.7"};      ///< what is cut away or no longer there
inline constexpr Pen finish_pen{0.4, "2.6 0.9"};       ///< what will be there once it is bored

enum class Anchor { start, middle, end };

/// Size of the letters of a drawing [mm of paper]: read at arm's length in print, and on a telephone.
inline constexpr double letter_size = 2.8;
/// From base line to base line within a text [mm].
inline constexpr double line_step = 3.5;

/// Points of a curve, by the number of each from 0 on.
template <class PointAt>
PaperPoints sampled(std::size_t count, PointAt point_at) {
    PaperPoints points;
    for (std::size_t i = 0; i < count; ++i)
        points.push_back(point_at(static_cast<double>(i)));
    return points;
}

/// "1,2"
inline std::string svg_point(PaperPoint at) {
    return svg_number(at.x) + "," + svg_number(at.y);
}
/// Commands of a path, "M1,2L3,4…".
std::string open_path(const PaperPoints& points);
inline std::string closed_path(const PaperPoints& points) {
    return open_path(points) + "Z";
}

/// Hatching of cut metal as an explicit path, so that it looks alike on screen and in print.
struct Hatching {
    double spacing; ///< between two lines [mm of paper]
    double degrees; ///< of the lines, counter-clockwise from the horizontal
};

inline constexpr Hatching weld_hatching{0.9, 45};  ///< close, rising to the right
inline constexpr Hatching boss_hatching{2.4, 135}; ///< wide, falling to the right

/// The hatching of weld that is crossed by layer boundaries so far apart [mm of paper]: wider where they lie
/// close, so that both are seen.
constexpr Hatching weld_hatching_between(double spacing) {
    return spacing < 1 ? Hatching{1.8, 45} : weld_hatching;
}

/// The commands of lines through everything that an odd number of the outlines encloses: an outline within
/// another is a hole in it. Lines of neighbouring shapes meet.
std::string hatch(const std::vector<PaperPoints>& outlines, const Hatching& hatching);

/// A drawing as it is made: black lines on white. Every text passes through `escape_markup`. Texts are drawn
/// last and break the lines behind them.
class Svg {
  public:
    void line(PaperPoint from, PaperPoint to, const Pen& pen) { path(open_path({from, to}), pen); }
    /// A circle; `figure` names the figure of the plan that it carries.
    void circle(PaperPoint centre, double radius, const Pen& pen, std::string_view figure = {});
    void path(std::string_view commands, const Pen& pen, std::string_view figure = {});
    /// Cut metal.
    void hatched(const std::vector<PaperPoints>& outlines, const Hatching& hatching) {
        path(hatch(outlines, hatching), hatch_pen);
    }
    /// A closed shape, white inside, that covers what was drawn before.
    void cover(const PaperPoints& shape, const Pen& pen);
    /// Text of one or several lines, `at` on the base line of the first.
    void text(PaperPoint at, const std::vector<std::string>& lines, Anchor anchor = Anchor::start);

    /// The whole element. @param id unique in the page; ids inside derive from it. @param title what it
    /// shows.
    /// @param words the same as the drawing in words, with its numbers. @param height of the paper [mm].
    /// @param mm_per_unit length of the bore for a millimetre of paper; 0: not to scale.
    std::string drawing(std::string_view id, std::string_view title, std::string_view words, double height,
                        double mm_per_unit = 0) const;

  private:
    std::string lines_;
    std::string texts_;
};

} // namespace ringfill
