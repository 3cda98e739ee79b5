#include <ringfill/fault/excerpt.hpp>

#include <ringfill/fault/place.hpp>
#include <ringfill/fault/printable.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace ringfill {

std::string excerpt(std::string_view text, std::size_t offset) {
    constexpr std::size_t before_caret = 60;
    constexpr std::size_t after_caret = 30;
    offset = std::min(offset, text.size());
    const std::size_t start = line_start(text, offset);
    const std::size_t end = std::min(text.find('\n', offset), text.size());
    const std::string_view whole_head = text.substr(start, offset - start);
    const std::string_view near_head = last_characters(whole_head, before_caret);
    const std::string head =
        (near_head.size() < whole_head.size() ? "…" : "") + printable(near_head, before_caret);
    const std::string tail = printable(text.substr(offset, end - offset), after_caret);
    return fmt::format("    {}{}\n    {:{}}^", head, tail, "", count_characters(head));
}

} // namespace ringfill
