#include <ringfill/report/draw/markup.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string escape_markup(std::string_view utf8) {
    constexpr std::pair<char, std::string_view> written_out[] = {
        {'&', "&amp;"}, {'<', "&lt;"}, {'>', "&gt;"}, {'"', "&quot;"}, {'\'', "&#39;"}};
    std::string safe;
    for (const char c : printable(utf8, std::string::npos)) {
        const auto* mark = std::find_if(std::begin(written_out), std::end(written_out),
                                        [c](const auto& pair) { return pair.first == c; });
        safe += mark == std::end(written_out) ? std::string_view(&c, 1) : mark->second;
    }
    return safe;
}

Markup Markup::as_written(std::string own) {
    Markup markup;
    markup.written_ = std::move(own);
    return markup;
}

Markup element(std::string_view name, const Markup& content, const Attributes& attributes) {
    std::string head(name);
    for (const auto& [attribute, value] : attributes)
        head += fmt::format(" {}=\"{}\"", attribute, escape_markup(value));
    return Markup::as_written(fmt::format("<{}>{}</{}>", head, content.written(), name));
}

} // namespace ringfill
