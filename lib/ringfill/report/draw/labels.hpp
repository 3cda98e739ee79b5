#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/report/draw/svg.hpp>

namespace ringfill {

/// The highest a letter may rise over its base line, and hang under it, in the common sans-serif faces [mm].
inline constexpr double letter_rise = 1.07 * letter_size;
inline constexpr double letter_hang = 0.3 * letter_size;
/// From a line of letters that a mark points at down to their base line [mm].
inline constexpr double half_letter = 0.36 * letter_size;

/// Width of a text, on the wide side for the common sans-serif faces [mm]. The size is that of its letters.
double text_width(std::string_view utf8, double size = letter_size);

/// A text broken at blanks so that no line is wider than `width` [mm]. No-break spaces hold; a word that is
/// too wide stands alone.
std::vector<std::string> wrap_label(std::string_view text, double width);

/// A quantity as it is shown, its number and unit held together by no-break spaces.
std::string held_together(std::string_view shown);

/// A text beside a drawing that tells what a point of it is.
struct Label {
    std::string text;
    PaperPoint target;
    int rank = 0; ///< where there is no room, those of the highest rank are left out first
};

/// Where labels may stand [mm of paper].
struct LabelColumn {
    double left;
    double right;
    double top;
    double bottom;
};

/// The column to the right of a detail.
constexpr LabelColumn beside_detail(double top, double height) {
    return {53.5, 84.3, top, top + height};
}

/// A label that has its place.
struct PlacedLabel : Label {
    std::vector<std::string> lines;
    double height;  ///< of its box [mm]
    double top = 0; ///< likewise

    PaperPoint leader_end(const LabelColumn& column) const {
        return {column.left - 0.7, top + letter_rise - 0.35 * letter_size};
    }
};

/// Sets labels one under another in a column, each as near the height of its target as the others let it, in
/// an order in which no two leaders cross. Labels that do not fit are left out, as are those wider than the
/// column.
std::vector<PlacedLabel> place_labels(const std::vector<Label>& labels, const LabelColumn& column);

/// Places labels and draws those that have a place, with their leaders.
void draw_labels(Svg& svg, const std::vector<Label>& labels, const LabelColumn& column);

/// Draws a sentence over the whole width of the paper, its highest letter at y. @return its height [mm].
double draw_note(Svg& svg, const std::string& note, double y);

/// Which of 1 … `count` are numbered when each number is `room` steps wide: the first, the last, and between
/// them all, every 5th, 10th, 50th, …
std::vector<int> numbers_shown(int count, double room);

} // namespace ringfill
