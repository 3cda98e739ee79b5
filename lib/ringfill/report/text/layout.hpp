#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/listed.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {

/// How a text report is dressed. Nothing is told by colour or weight alone.
struct Style {
    bool on_terminal = false;

    std::string strong(std::string_view text) const {
        return on_terminal ? "\033[1m" + std::string(text) + "\033[0m" : std::string(text);
    }
};

/// No line is longer than this many characters.
inline constexpr std::size_t page_width = 79;

/// The cells of the rows of a table.
using Rows = std::vector<std::vector<std::string>>;

/// Rows of cells set in columns two blanks apart; numbers (columns marked right) end in line. Every character
/// counts as one column and blanks at the end of a row are left out.
/// @return one line a row, without its line break.
std::vector<std::string> columns(const Rows& rows, const std::vector<bool>& right);

/// The same as lines of a text, two blanks before each.
std::string table(const Rows& rows, const std::vector<bool>& right);

/// A text broken at blanks so that no line is longer than `width` characters; the first line begins with
/// `first`, the others with as many blanks. Several blanks between words are one. A word that is too long
/// stands alone and is cut. Ends in a line break.
std::string wrapped(std::string_view text, std::string_view first = "  ", std::size_t width = page_width);

/// Sentences, each wrapped under its beginning.
std::string wrapped(const Sentences& sentences);

/// A heading and under it, each behind a dash, the words for each of a list.
template <class List, class Words>
std::string bullets(std::string_view heading, const Style& style, const List& list, Words words) {
    return style.strong(heading) + '\n' +
           listed(list, "", [&](const auto& one) { return wrapped(words(one), "- "); });
}

} // namespace ringfill
