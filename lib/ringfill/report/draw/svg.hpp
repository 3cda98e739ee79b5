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

/// A number in a drawing, at most so many decimals, without zeros at its end; 0 never has a sign. Throws
/// std::logic_error when it is not finite.
std::string svg_number(double value, int decimals = 3);

/// A line as ISO 128 draws it: width [mm of paper], and lengths of dashes and gaps, empty for a full line.
struct Pen {
    double width;
    std::string_view dashes;
};

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

/// Commands of a path, "M1,2L3,4…".
std::string open_path(const std::vector<PaperPoint>& points);
std::string closed_path(const std::vector<PaperPoint>& points);

/// What stands at the head of a drawing.
struct DrawingHead {
    std::string id;          ///< unique in the page; ids inside derive from it
    std::string title;       ///< what it shows
    std::string description; ///< the same as the drawing in words, with its numbers
    double width = 0;        ///< of the paper [mm]
    double height = 0;
    double mm_per_unit = 0; ///< length of the bore for a millimetre of paper; 0: not to scale
};

/// A drawing as it is made: black lines on white. Every text passes through `escape_markup`. Texts are drawn
/// last and break the lines behind them.
class Svg {
  public:
    void line(PaperPoint from, PaperPoint to, const Pen& pen);
    /// A circle; `figure` names the figure of the plan that it carries.
    void circle(PaperPoint centre, double radius, const Pen& pen, std::string_view figure = {});
    void path(std::string_view commands, const Pen& pen, std::string_view figure = {});
    /// A closed shape, white inside, that covers what was drawn before.
    void cover(const std::vector<PaperPoint>& shape, const Pen& pen);
    /// Text of one or several lines, `at` on the base line of the first.
    void text(PaperPoint at, const std::vector<std::string>& lines, Anchor anchor = Anchor::start);

    /// The whole element.
    std::string drawing(const DrawingHead& head) const;

  private:
    std::string lines_;
    std::string texts_;
};

} // namespace ringfill
