#include "mdoc.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill::cli {
namespace {

constexpr std::size_t longest_line = 78;

bool is_no_letter(char c) {
    return !((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'));
}

std::string escaped(std::string_view text, bool literal) {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const Character c = character_at(text, i);
        if (c.code >= 0x80)
            out += fmt::format("\\[u{:04X}]", c.code);
        else if (c.code == '\\')
            out += "\\e";
        else if (c.code == '"')
            out += "\\(dq";
        else if (c.code == '-' && (literal || i == 0 || is_no_letter(text[i - 1])))
            out += "\\-"; // what is typed must not become a hyphen
        else
            out += static_cast<char>(c.code);
        i += c.bytes;
    }
    return out;
}

/// A line that begins with one of these would be a request.
std::string as_line(std::string line) {
    return line.starts_with('.') || line.starts_with('\'') ? "\\&" + line : line;
}

} // namespace

std::string mdoc_text(std::string_view text) {
    return escaped(text, false);
}

std::string mdoc_prose(std::string_view text) {
    std::string out;
    std::string line;
    const auto end_line = [&] {
        if (!line.empty())
            out += as_line(std::exchange(line, {})) + "\n";
    };
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(" \n"), text.size());
        const std::string word = mdoc_text(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (word.empty())
            continue;
        if (line.size() + 1 + word.size() > longest_line)
            end_line();
        line += (line.empty() ? "" : " ") + word;
        if (word.ends_with('.'))
            end_line();
    }
    end_line();
    return out;
}

std::string mdoc_literal(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        out += as_line(escaped(text.substr(0, end), true)) + "\n";
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

} // namespace ringfill::cli
