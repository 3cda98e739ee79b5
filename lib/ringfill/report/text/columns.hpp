#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ringfill {

/// Rows of cells set in columns two blanks apart; numbers (columns marked right) end in line. Every character
/// counts as one column and blanks at the end of a row are left out.
/// @return one line a row, without its line break.
std::vector<std::string> columns(const std::vector<std::vector<std::string>>& rows,
                                 const std::vector<bool>& right);

/// A text broken at blanks so that no line is longer than `width` characters; the first line begins with
/// `first`, the others with as many blanks. Several blanks between words are one. A word that is too long
/// stands alone and is cut. Ends in a line break.
std::string wrapped(std::string_view text, std::string_view first, std::size_t width = 79);

} // namespace ringfill
