#include <ringfill/document/write.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <stdexcept>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// A character as \uXXXX, in two halves where it needs them.
void write_escaped(std::string& out, std::uint32_t code) {
    if (code < 0x10000) {
        out += fmt::format("\\u{:04x}", code);
        return;
    }
    const std::uint32_t rest = code - 0x10000;
    out += fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + (rest >> 10U), 0xDC00 + (rest & 0x3FFU));
}

/// What could disturb a terminal is escaped, so that a result can be looked at; a reader gets the same text.
void write_text(std::string& out, std::string_view text) {
    out += '"';
    for (std::size_t i = 0; i < text.size();) {
        const Character c = character_at(text, i);
        if (c.code == '"' || c.code == '\\')
            out += '\\';
        if (c.code == '\n')
            out += "\\n";
        else if (c.code == '\t')
            out += "\\t";
        else if (disturbs(c.code))
            write_escaped(out, c.code);
        else
            out += text.substr(i, c.bytes);
        i += c.bytes;
    }
    out += '"';
}

bool is_plain(const Value& value) {
    return !value.list() && !value.object();
}

void write_value(std::string& out, const Value& value, std::size_t depth);

void write_list(std::string& out, const Value::List& list, std::size_t depth) {
    const bool one_line = ranges::all_of(list, is_plain);
    const std::string indent(2 * (depth + 1), ' ');
    out += '[';
    for (std::size_t i = 0; i < list.size(); ++i) {
        out += one_line ? (i ? ", " : "") : (i ? ",\n" + indent : "\n" + indent);
        write_value(out, list[i], depth + 1);
    }
    out += one_line ? "]" : '\n' + std::string(2 * depth, ' ') + ']';
}

void write_object(std::string& out, const Value::Object& members, std::size_t depth) {
    const std::string indent(2 * (depth + 1), ' ');
    out += '{';
    for (std::size_t i = 0; i < members.size(); ++i) {
        out += (i ? ",\n" : "\n") + indent;
        write_text(out, members[i].name);
        out += ": ";
        write_value(out, members[i].value, depth + 1);
    }
    out += members.empty() ? "}" : '\n' + std::string(2 * depth, ' ') + '}';
}

void write_value(std::string& out, const Value& value, std::size_t depth) {
    if (const auto* list = value.list())
        write_list(out, *list, depth);
    else if (const auto* members = value.object())
        write_object(out, *members, depth);
    else if (const auto* text = value.text())
        write_text(out, *text);
    else if (const auto* number = value.number())
        out += write_number(*number);
    else if (const auto* flag = value.flag())
        out += *flag ? "true" : "false";
    else
        out += "null";
}

} // namespace

std::string write_number(double number) {
    if (!std::isfinite(number))
        throw std::logic_error("a number that is not finite reached the result");
    if (number == 0)
        return "0";
    const std::string digits = fmt::format("{:.14e}", number);
    double rounded = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), rounded);
    if (const double size = std::fabs(rounded); size >= 1e-5 && size < 1e15) {
        const int decimals = std::max(0, 14 - static_cast<int>(std::floor(std::log10(size))));
        std::string text = fmt::format("{:.{}f}", rounded, decimals);
        if (text.find('.') != std::string::npos)
            text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
        return text;
    }
    return fmt::format("{}", rounded);
}

std::string write_json(const Value& value) {
    std::string out;
    write_value(out, value, 0);
    out += '\n';
    return out;
}

} // namespace ringfill
