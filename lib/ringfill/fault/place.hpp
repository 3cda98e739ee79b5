#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ringfill {

/// Where something stands in a file that a person wrote.
/// Lines and columns count from 1, columns in characters; 0 means that the position is not known.
struct Place {
    std::string file = {};
    std::size_t line = 0;
    std::size_t column = 0;
    std::string path = {}; ///< the way through the document, such as bores[1].worn.diameter; may be empty
};

/// Line and column of a byte offset in a text; an offset past the end is the end.
Place place_at(std::string_view text, std::size_t offset);

/// The byte at which the line of an offset begins; an offset at a line break belongs to the line it ends.
std::size_t line_start(std::string_view text, std::size_t offset);

/// The place as people and editors read it: "job.json:14:22: bores[1].worn.diameter", parts not known left
/// out.
std::string to_string(const Place& place);

/// The path of a member of an object: "bores[1]" and "worn" give "bores[1].worn".
std::string member_path(std::string_view parent, std::string_view name);

/// The path of an element of a list: "bores" and 1 give "bores[1]".
std::string element_path(std::string_view parent, std::size_t index);

} // namespace ringfill
