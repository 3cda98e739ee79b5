#include <ringfill/report/draw/markup.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string escape_markup(std::string_view utf8) {
    std::string safe;
    for (const char c : printable(utf8, std::string::npos))
        switch (c) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        case '\'':
            safe += "&#39;";
            break;
        default:
            safe += c;
        }
    return safe;
}

Markup& Markup::operator+=(const Markup& next) {
    written_ += next.written_;
    return *this;
}

Markup Markup::as_written(std::string own) {
    Markup markup;
    markup.written_ = std::move(own);
    return markup;
}

Markup operator+(Markup first, const Markup& second) {
    first += second;
    return first;
}

Markup words(std::string_view utf8) {
    return Markup::as_written(escape_markup(utf8));
}

Markup element(std::string_view name, const Markup& content, const Attributes& attributes) {
    std::string written = "<";
    written += name;
    for (const auto& [attribute, value] : attributes) {
        written += ' ';
        written += attribute;
        written += "=\"";
        written += escape_markup(value);
        written += '"';
    }
    written += '>';
    written += content.written();
    written += "</";
    written += name;
    written += '>';
    return Markup::as_written(std::move(written));
}

Markup element(std::string_view name, std::string_view utf8, const Attributes& attributes) {
    return element(name, words(utf8), attributes);
}

} // namespace ringfill
