#include <ringfill/report/draw/markup.hpp>

#include <boost/algorithm/string/replace.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

std::string escape_markup(std::string_view utf8) {
    // & first: the others bring more of it.
    constexpr std::pair<const char*, const char*> written_out[] = {
        {"&", "&amp;"}, {"<", "&lt;"}, {">", "&gt;"}, {"\"", "&quot;"}, {"'", "&#39;"}};
    std::string safe = printable(utf8, std::string::npos);
    for (const auto& [mark, name] : written_out)
        boost::replace_all(safe, mark, name);
    return safe;
}

Markup element(std::string_view name, const Markup& content, const Attributes& attributes) {
    std::string head(name);
    for (const auto& [attribute, value] : attributes)
        head += fmt::format(" {}=\"{}\"", attribute, escape_markup(value));
    return Markup::as_written(fmt::format("<{}>{}</{}>", head, content.written(), name));
}

} // namespace ringfill
