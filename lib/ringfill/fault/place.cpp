#include <ringfill/fault/place.hpp>

#include <ringfill/fault/printable.hpp>

#include <algorithm>
#include <cstring>

#include <fmt/format.h>

namespace ringfill {

std::size_t line_start(std::string_view text, std::size_t offset) {
    // memrchr: the last break of a text of many megabytes is asked for with every fault in it
    const void* last = ::memrchr(text.data(), '\n', std::min(offset, text.size()));
    return last ? static_cast<std::size_t>(static_cast<const char*>(last) - text.data()) + 1 : 0;
}

Place place_at(std::string_view text, std::size_t offset) {
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    Place place;
    place.line = 1 + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    place.column = 1 + count_characters(before.substr(line_start(text, offset)));
    return place;
}

std::string to_string(const Place& place) {
    std::string text = printable(place.file);
    if (place.line > 0)
        text += fmt::format("{}{}:{}", text.empty() ? "" : ":", place.line, place.column);
    if (!place.path.empty())
        text += fmt::format("{}{}", text.empty() ? "" : ": ", printable(place.path));
    return text;
}

std::string member_path(std::string_view parent, std::string_view name) {
    std::string path;
    path.reserve(parent.size() + 1 + name.size());
    return path.append(parent).append(parent.empty() ? "" : ".").append(name);
}

std::string element_path(std::string_view parent, std::size_t index) {
    return fmt::format("{}[{}]", parent, index);
}

} // namespace ringfill
