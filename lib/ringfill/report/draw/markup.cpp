#include <ringfill/report/draw/markup.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string escape_markup(std::string_view utf8) {
    constexpr std::pair<char, std::string_view> written_out[] = {
        {'&', "&amp;"}, {'<', "&lt;"}, {'>', "&gt;"}, {'"', "&quot;"}, {'\'', "&#39;"}};
    std::string safe;
    for (const char c : printable(utf8, std::string::npos)) {
        const auto* mark = ranges::find(written_out, c, &std::pair<char, std::string_view>::first);
        safe += mark == std::end(written_out) ? std::string_view(&c, 1) : mark->second;
    }
    return safe;
}

Markup element(std::string_view name, const Markup& content, const Attributes& attributes) {
    std::string head(name);
    for (const auto& [attribute, value] : attributes)
        head += fmt::format(" {}=\"{}\"", attribute, escape_markup(value));
    return Markup::as_written(fmt::format("<{}>{}</{}>", head, content.written(), name));
}

} // namespace ringfill
