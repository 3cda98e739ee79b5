#include <ringfill/document/write.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <iterator>
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

/// For each byte, whether it is a character of its own that stands in a JSON text as it is.
constexpr std::array<bool, 256> stands_as_it_is = [] {
    std::array<bool, 256> table = {};
    for (std::size_t code = 0x20; code < 0x7F; ++code)
        table[code] = code != '"' && code != '\\';
    return table;
}();

/// What could disturb a terminal is escaped, so that a result can be looked at; a reader gets the same text.
void write_text(std::string& out, std::string_view text) {
    out += '"';
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && stands_as_it_is[static_cast<unsigned char>(text[end])])
            ++end;
        out += text.substr(i, end - i);
        if (end == text.size())
            break;
        const Character c = character_at(text, end);
        if (c.code == '"' || c.code == '\\')
            out += '\\';
        if (c.code == '\n')
            out += "\\n";
        else if (c.code == '\t')
            out += "\\t";
        else if (disturbs(c.code))
            write_escaped(out, c.code);
        else
            out += text.substr(end, c.bytes);
        i = end + c.bytes;
    }
    out += '"';
}

/// A number in the fewest digits that keep fifteen significant ones, from the sixteen signs of its scientific
/// form: they are only laid out anew.
void put_number(std::string& out, double number) {
    if (!std::isfinite(number))
        throw std::logic_error("a number that is not finite reached the result");
    if (number == 0) {
        out += '0';
        return;
    }
    if (std::fabs(number) < 1e15 && number == std::trunc(number)) {
        out += fmt::format_int(static_cast<std::int64_t>(number)).c_str();
        return;
    }
    std::array<char, 32> signs = {};
    const char* const end = std::to_chars(signs.data(), signs.data() + signs.size(), std::fabs(number),
                                          std::chars_format::scientific, 14)
                                .ptr;
    const char* const exponent_at = std::find(signs.data(), signs.data() + signs.size(), 'e');
    int exponent = 0;
    std::from_chars(exponent_at + (exponent_at[1] == '+' ? 2 : 1), end, exponent);
    if (exponent < -5 || exponent > 14) {
        double rounded = 0;
        std::from_chars(signs.data(), end, rounded);
        fmt::format_to(std::back_inserter(out), "{}", number < 0 ? -rounded : rounded);
        return;
    }
    std::string_view digits(signs.data() + 1, 15); // "d.dddd" with the first digit moved behind the point
    signs[1] = signs[0];
    digits = digits.substr(0, digits.find_last_not_of('0') + 1);
    if (number < 0)
        out += '-';
    const auto whole = static_cast<std::size_t>(std::max(0, exponent + 1));
    if (whole == 0) {
        out += "0.";
        out.append(static_cast<std::size_t>(-exponent - 1), '0');
        out += digits;
    } else if (digits.size() <= whole) {
        out += digits;
        out.append(whole - digits.size(), '0');
    } else {
        out += digits.substr(0, whole);
        out += '.';
        out += digits.substr(whole);
    }
}

bool is_plain(const Value& value) {
    return !value.list() && !value.object();
}

/// Writes values either laid out for people or all on one line.
class Writer {
  public:
    Writer(std::string& out, bool on_one_line) : out_(out), on_one_line_(on_one_line) {}

    void write(const Value& value, std::size_t depth) {
        if (const auto* list = value.list())
            write_list(*list, depth);
        else if (const auto* members = value.object())
            write_object(*members, depth);
        else if (const auto* text = value.text())
            write_text(out_, *text);
        else if (const auto* number = value.number())
            put_number(out_, *number);
        else if (const auto* flag = value.flag())
            out_ += *flag ? "true" : "false";
        else
            out_ += "null";
    }

  private:
    void write_list(const Value::List& list, std::size_t depth) {
        const bool short_list = on_one_line_ || ranges::all_of(list, is_plain);
        out_ += '[';
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (i > 0)
                out_ += short_list && !on_one_line_ ? ", " : ",";
            if (!short_list)
                break_line(depth + 1);
            write(list[i], depth + 1);
        }
        if (!short_list)
            break_line(depth);
        out_ += ']';
    }

    void write_object(const Value::Object& members, std::size_t depth) {
        out_ += '{';
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (i > 0)
                out_ += ',';
            break_line(depth + 1);
            write_text(out_, members[i].name);
            out_ += on_one_line_ ? ":" : ": ";
            write(members[i].value, depth + 1);
        }
        if (!members.empty())
            break_line(depth);
        out_ += '}';
    }

    void break_line(std::size_t depth) {
        if (on_one_line_)
            return;
        out_ += '\n';
        out_.append(2 * depth, ' ');
    }

    std::string& out_;
    bool on_one_line_;
};

} // namespace

std::string write_number(double number) {
    std::string out;
    put_number(out, number);
    return out;
}

std::string write_json(const Value& value) {
    std::string out;
    Writer(out, false).write(value, 0);
    out += '\n';
    return out;
}

std::string write_json_line(const Value& value) {
    std::string out;
    append_json(out, value);
    out += '\n';
    return out;
}

void append_json(std::string& text, const Value& value) {
    Writer(text, true).write(value, 0);
}

} // namespace ringfill
