#include <ringfill/document/write.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <stdexcept>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

/// What is put behind a text. It grows in steps and is cut at the end, so that the many short pieces of JSON
/// cost little more than their bytes.
class End {
  public:
    explicit End(std::string& text) : text_(text), used_(text.size()) {}
    End(const End&) = delete;
    End& operator=(const End&) = delete;
    ~End() { text_.resize(used_); }

    void put(char sign) {
        make_room(1);
        text_[used_++] = sign;
    }
    void put(std::string_view piece) {
        make_room(piece.size());
        std::copy(piece.begin(), piece.end(), text_.data() + used_);
        used_ += piece.size();
    }
    void put(std::size_t count, char sign) {
        make_room(count);
        std::fill_n(text_.data() + used_, count, sign);
        used_ += count;
    }

  private:
    void make_room(std::size_t bytes) {
        constexpr std::size_t step = 1'024;
        if (used_ + bytes > text_.size())
            text_.resize(used_ + bytes + step);
    }

    std::string& text_;
    std::size_t used_;
};

/// A character as \uXXXX, in two halves where it needs them.
void write_escaped(End& out, std::uint32_t code) {
    if (code < 0x10000) {
        out.put(fmt::format("\\u{:04x}", code));
        return;
    }
    const std::uint32_t rest = code - 0x10000;
    out.put(fmt::format("\\u{:04x}\\u{:04x}", 0xD800 + (rest >> 10U), 0xDC00 + (rest & 0x3FFU)));
}

/// For each byte, whether it is a character of its own that stands in a JSON text as it is.
constexpr std::array<bool, 256> stands_as_it_is = [] {
    std::array<bool, 256> table = {};
    for (std::size_t code = 0x20; code < 0x7F; ++code)
        table[code] = code != '"' && code != '\\';
    return table;
}();

/// What could disturb a terminal is escaped, so that a result can be looked at; a reader gets the same text.
void write_text(End& out, std::string_view text) {
    out.put('"');
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && stands_as_it_is[static_cast<unsigned char>(text[end])])
            ++end;
        out.put(text.substr(i, end - i));
        if (end == text.size())
            break;
        const Character c = character_at(text, end);
        if (c.code == '"' || c.code == '\\')
            out.put('\\');
        if (c.code == '\n')
            out.put("\\n");
        else if (c.code == '\t')
            out.put("\\t");
        else if (disturbs(c.code))
            write_escaped(out, c.code);
        else
            out.put(text.substr(end, c.bytes));
        i = end + c.bytes;
    }
    out.put('"');
}

/// A number whose scientific form has an exponent from -5 to 14 laid out without one. `digits` are those
/// behind which nothing but zeros follows.
void lay_out(End& out, std::string_view digits, int exponent) {
    const auto whole = static_cast<std::size_t>(std::max(0, exponent + 1));
    if (whole == 0) {
        out.put("0.");
        out.put(static_cast<std::size_t>(-exponent - 1), '0');
        out.put(digits);
    } else if (digits.size() <= whole) {
        out.put(digits);
        out.put(whole - digits.size(), '0');
    } else {
        out.put(digits.substr(0, whole));
        out.put('.');
        out.put(digits.substr(whole));
    }
}

/// A number in the fewest digits that keep fifteen significant ones, which its scientific form is asked for.
void put_number(End& out, double number) {
    if (!std::isfinite(number))
        throw std::logic_error("a number that is not finite reached the result");
    if (std::fabs(number) < 1e15 && number == std::trunc(number)) {
        const fmt::format_int whole(static_cast<std::int64_t>(number));
        out.put(std::string_view(whole.data(), whole.size()));
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
        out.put(fmt::format("{}", number < 0 ? -rounded : rounded));
        return;
    }
    if (number < 0)
        out.put('-');
    signs[1] = signs[0]; // over the point, so that the fifteen digits stand together
    const std::string_view digits(signs.data() + 1, 15);
    lay_out(out, digits.substr(0, digits.find_last_not_of('0') + 1), exponent);
}

bool is_plain(const Value& value) {
    return !value.list() && !value.object();
}

/// Writes values either laid out for people or all on one line.
class Writer {
  public:
    Writer(std::string& text, bool on_one_line) : out_(text), on_one_line_(on_one_line) {}

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
            out_.put(*flag ? std::string_view("true") : std::string_view("false"));
        else
            out_.put("null");
    }

  private:
    void write_list(const Value::List& list, std::size_t depth) {
        const bool short_list = on_one_line_ || ranges::all_of(list, is_plain);
        out_.put('[');
        for (std::size_t i = 0; i < list.size(); ++i) {
            if (i > 0)
                out_.put(short_list && !on_one_line_ ? std::string_view(", ") : std::string_view(","));
            if (!short_list)
                break_line(depth + 1);
            write(list[i], depth + 1);
        }
        if (!short_list)
            break_line(depth);
        out_.put(']');
    }

    void write_object(const Value::Object& members, std::size_t depth) {
        out_.put('{');
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (i > 0)
                out_.put(',');
            break_line(depth + 1);
            write_text(out_, members[i].name);
            out_.put(on_one_line_ ? std::string_view(":") : std::string_view(": "));
            write(members[i].value, depth + 1);
        }
        if (!members.empty())
            break_line(depth);
        out_.put('}');
    }

    void break_line(std::size_t depth) {
        if (on_one_line_)
            return;
        out_.put('\n');
        out_.put(2 * depth, ' ');
    }

    End out_;
    bool on_one_line_;
};

} // namespace

std::string write_number(double number) {
    std::string text;
    {
        End out(text);
        put_number(out, number);
    }
    return text;
}

std::string write_json(const Value& value) {
    std::string text;
    Writer(text, false).write(value, 0);
    text += '\n';
    return text;
}

std::string write_json_line(const Value& value) {
    std::string text;
    append_json(text, value);
    text += '\n';
    return text;
}

void append_json(std::string& text, const Value& value) {
    Writer(text, true).write(value, 0);
}

} // namespace ringfill
