#include <ringfill/fault/place.hpp>

#include <ringfill/fault/printable.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace ringfill {

Place place_at(std::string_view text, std::size_t offset) {
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    const std::size_t line_start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    Place place;
    place.line = 1 + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    place.column = 1 + count_characters(before.substr(line_start));
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
    path += parent;
    if (!parent.empty())
        path += '.';
    path += name;
    return path;
}

std::string element_path(std::string_view parent, std::size_t index) {
    return fmt::format("{}[{}]", parent, index);
}

} // namespace ringfill
