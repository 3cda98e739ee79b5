#include <ringfill/document/scan.hpp>

#include <algorithm>
#include <array>
#include <climits>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

#include <boost/json/parse.hpp>
#include <boost/json/stream_parser.hpp>

#include <fmt/format.h>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\n' || c == '\r' || c == '\t';
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Bytes that stand for themselves in a text, whatever stands beside them.
constexpr std::array<bool, 256> plain = [] {
    std::array<bool, 256> table{};
    for (std::size_t c = 0x20; c < 0x80; ++c)
        table[c] = c != '"' && c != '\\';
    return table;
}();

/// The end of the text that a quote begins, its closing quote included.
std::size_t quoted_end(std::string_view text, std::size_t begin) {
    for (std::size_t i = begin + 1; i < text.size(); ++i) {
        if (text[i] == '"')
            return i + 1;
        if (text[i] == '\\')
            ++i;
    }
    return text.size();
}

/// Whether a comment begins there that is not closed.
bool is_open_comment(std::string_view text, std::size_t begin) {
    return text.substr(std::min(begin, text.size()), 2) == "/*" &&
           text.find("*/", begin + 2) == std::string_view::npos;
}

int hex_digit(char c) {
    const char low = static_cast<char>(c | 0x20);
    return is_digit(c) ? c - '0' : low >= 'a' && low <= 'f' ? low - 'a' + 10 : -1;
}

/// A number with more digits or a larger exponent than doubles hold exactly, as Boost.JSON reads it piece by
/// piece; nothing for an exponent that it refuses.
std::optional<double> long_number(std::string_view typed) {
    boost::json::stream_parser parser;
    boost::json::error_code error;
    constexpr std::size_t piece = 16; // it reads a long run of digits in another way, to another last digit
    for (; !typed.empty() && !error; typed.remove_prefix(std::min(piece, typed.size())))
        parser.write(typed.data(), std::min(piece, typed.size()), error);
    if (!error)
        parser.finish(error);
    if (error)
        return std::nullopt;
    const boost::json::value read = parser.release();
    return read.is_int64()    ? static_cast<double>(read.get_int64())
           : read.is_uint64() ? static_cast<double>(read.get_uint64())
                              : read.get_double();
}

/// Puts a character into a text as UTF-8.
void put_character(std::string& to, std::uint32_t code) {
    const auto put = [&](std::uint32_t byte) { to += static_cast<char>(byte); };
    if (code < 0x80)
        return put(code);
    if (code < 0x800) {
        put(0xC0U | code >> 6U);
    } else {
        if (code < 0x10000) {
            put(0xE0U | code >> 12U);
        } else {
            put(0xF0U | code >> 18U);
            put(0x80U | (code >> 12U & 0x3FU));
        }
        put(0x80U | (code >> 6U & 0x3FU));
    }
    put(0x80U | (code & 0x3FU));
}

} // namespace

bool Scanner::stop(Broken why, std::size_t offset) {
    if (!is_in_text_ && is_open_comment(text_, offset))
        return stop_at_end();
    broken_ = why;
    at_ = offset;
    return false;
}

std::string Scanner::path() const {
    std::string path;
    for (const Open& open : open_)
        if (open.is_list)
            path = element_path(path, open.index);
        else if (!open.key.empty())
            path = member_path(path, open.key);
    return path;
}

bool Scanner::read() {
    if (!skip_blanks_before_more() || !value(document_.root) || !skip_blanks())
        return false;
    if (at_ < text_.size())
        return stop(Broken::goes_on, at_);
    return !has_too_many_members_ || stop(Broken::too_many_members, text_.size());
}

/// Goes over blanks and comments. A comment that is not closed runs to the end.
bool Scanner::skip_blanks() {
    for (;;) {
        while (at_ < text_.size() && is_blank(text_[at_]))
            ++at_;
        const std::string_view sign = text_.substr(at_, 2);
        if (sign == "//") {
            at_ = std::min(text_.size(), text_.find('\n', at_));
        } else if (sign == "/*") {
            const std::size_t close = text_.find("*/", at_ + 2);
            if (close == std::string_view::npos)
                return stop_at_end();
            at_ = close + 2;
        } else {
            return true;
        }
    }
}

bool Scanner::count(std::size_t offset) {
    if (has_too_many_members_)
        return stop(Broken::too_many_members, offset);
    if (values_left_ == 0)
        return stop(Broken::too_many_values, offset);
    --values_left_;
    return true;
}

bool Scanner::value(Value& to) {
    to.begin = at_;
    bool is_read = false;
    switch (text_[at_]) {
    case '{':
        is_read = object(to);
        break;
    case '[':
        is_read = list(to);
        break;
    case '"':
        is_read = text(to.held.emplace<std::string>(), longest_text) && count(at_ - 1);
        break;
    case 't':
        is_read = literal(to, "true", Value(true));
        break;
    case 'f':
        is_read = literal(to, "false", Value(false));
        break;
    case 'n':
        is_read = literal(to, "null", Value());
        break;
    default:
        if (text_[at_] != '-' && !is_digit(text_[at_]))
            return stop(Broken::syntax, at_);
        is_read = number(to);
    }
    to.end = at_;
    return is_read;
}

bool Scanner::literal(Value& to, std::string_view word, Value value) {
    const std::string_view rest = text_.substr(at_);
    if (!rest.starts_with(word)) {
        // A word as long as this one is wrong from its begin, a shorter one where it differs.
        const std::size_t end = std::min(rest.size(), rest.find_first_of(" \t\r\n:,{}[]\"/", 1));
        std::size_t same = 1;
        while (end < word.size() && same < end && rest[same] == word[same])
            ++same;
        if (end < word.size() && at_ + same == text_.size())
            return stop_at_end();
        return stop(Broken::syntax, end < word.size() ? at_ + same : at_);
    }
    if (!count(at_))
        return false;
    to.held = std::move(value.held);
    at_ += word.size();
    return true;
}

/// One digit at least.
bool Scanner::digits(Broken at_end) {
    if (at_ == text_.size())
        return stop(at_end, at_);
    if (!is_digit(text_[at_]))
        return stop(Broken::syntax, at_);
    while (at_ < text_.size() && is_digit(text_[at_]))
        ++at_;
    return true;
}

bool Scanner::number(Value& to) {
    const std::size_t begin = at_;
    const auto here_is = [&](char c) { return at_ < text_.size() && text_[at_] == c; };
    const bool is_negative = here_is('-');
    at_ += is_negative ? 1 : 0;
    const std::size_t whole = at_;
    if (here_is('0'))
        ++at_;
    else if (!digits(Broken::ends_early))
        return false;
    const std::size_t point = at_;
    if (here_is('.')) {
        ++at_;
        if (!digits(point - whole > 19 ? Broken::ends_early : Broken::syntax))
            return false;
    }
    if (here_is('e') || here_is('E')) {
        ++at_;
        const bool is_signed = here_is('-') || here_is('+');
        at_ += is_signed ? 1 : 0;
        const std::size_t first = at_;
        if (!digits(is_signed ? Broken::syntax : Broken::ends_early))
            return false;
        std::int64_t exponent = 0;
        for (std::size_t i = first; i < at_; ++i) {
            exponent = 10 * exponent + (text_[i] - '0');
            if (exponent > INT_MAX)
                return stop(Broken::syntax, i);
        }
    }
    auto read = short_number(text_.substr(whole, at_ - whole));
    if (!read)
        read = long_number(text_.substr(begin, at_ - begin));
    else if (is_negative && (*read != 0 || at_ > point)) // a whole -0 is 0
        *read = -*read;
    if (!read)
        return stop(Broken::syntax, at_);
    if (is_open_comment(text_, at_))
        return stop_at_end();
    if (!std::isfinite(*read) && faults_.size() < most_faults)
        faults_.push_back(fault_at(document_, begin, path(), printable(text_.substr(begin, at_ - begin), 60),
                                   "is too large to be a number here", "write the value you measured"));
    to.held = std::isfinite(*read) ? *read : 0.0;
    return count(at_);
}

bool Scanner::list(Value& to) {
    if (depth_left_ == 0)
        return stop(Broken::too_deep, at_);
    if (!count(at_))
        return false;
    Value::List& elements = to.held.emplace<Value::List>();
    elements.reserve(3); // a range and its source
    --depth_left_;
    ++at_;
    open_.push_back({true});
    if (!skip_blanks_before_more())
        return false;
    while (text_[at_] != ']') {
        elements.emplace_back();
        if (!value(elements.back()))
            return false;
        ++open_.back().index;
        if (!skip_blanks_before_more())
            return false;
        if (text_[at_] == ']')
            break;
        if (text_[at_] != ',')
            return stop(Broken::syntax, at_);
        ++at_;
        if (!skip_blanks_before_more())
            return false;
    }
    open_.pop_back();
    ++depth_left_;
    ++at_;
    return true;
}

bool Scanner::object(Value& to) {
    if (depth_left_ == 0)
        return stop(Broken::too_deep, at_);
    if (!count(at_))
        return false;
    Value::Object& members = to.held.emplace<Value::Object>();
    members.reserve(4);
    --depth_left_;
    ++at_;
    open_.push_back({false});
    if (!skip_blanks_before_more())
        return false;
    while (text_[at_] != '}') {
        if (text_[at_] != '"')
            return stop(Broken::syntax, at_);
        if (!member(members) || !skip_blanks_before_more())
            return false;
        if (text_[at_] == '}')
            break;
        if (text_[at_] != ',')
            return stop(Broken::syntax, at_);
        ++at_;
        if (!skip_blanks_before_more())
            return false;
    }
    open_.pop_back();
    ++depth_left_;
    ++at_;
    return true;
}

bool Scanner::member(Value::Object& members) {
    Member& read = members.emplace_back();
    read.name_begin = at_;
    if (!text(read.name, longest_key))
        return false;
    read.name_end = at_;
    open_.back().key = read.name;
    if (!skip_blanks_before_more())
        return false;
    if (text_[at_] != ':')
        return stop(Broken::syntax, at_);
    ++at_;
    if (!skip_blanks_before_more() || !value(read.value))
        return false;
    const auto before = std::find_if(members.begin(), members.end() - 1,
                                     [&](const Member& one) { return one.name == read.name; });
    const bool is_twice = before != members.end() - 1;
    if (is_twice && faults_.size() < most_faults) // finding the place of a fault reads the whole text before
        faults_.push_back(fault_at(document_, read.name_begin, path(), {},
                                   fmt::format("stands here twice, first in line {}",
                                               place_at(document_.text, before->name_begin).line),
                                   "keep one of the two"));
    has_too_many_members_ = has_too_many_members_ || (!is_twice && members.size() > most_members);
    if (is_twice || members.size() > most_members)
        members.pop_back();
    else
        open_.back().key.clear();
    return true;
}

/// Stops at a control sign or at bytes that are no UTF-8; at a character that lacks its end, behind the text.
bool Scanner::stop_at_sign() {
    const auto lead = static_cast<unsigned char>(text_[at_]);
    const std::size_t bytes = lead >= 0xF5 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 1;
    const std::size_t end = quoted_end(text_, text_begin_);
    if (at_ + bytes <= end)
        return stop(Broken::syntax, at_);
    return end == text_.size() ? stop_at_end() : stop(Broken::syntax, end);
}

/// A text between quotes, which opens here.
bool Scanner::text(std::string& to, std::size_t longest) {
    text_begin_ = at_++;
    is_in_text_ = true;
    for (;;) {
        const std::size_t run = at_;
        while (at_ < text_.size()) {
            if (plain[static_cast<unsigned char>(text_[at_])]) {
                ++at_;
                continue;
            }
            const bool is_beyond_ascii = (static_cast<unsigned char>(text_[at_]) & 0x80U) != 0;
            const std::size_t bytes = is_beyond_ascii ? character_at(text_, at_).bytes : 1;
            if (bytes == 1)
                break;
            at_ += bytes;
        }
        if (to.size() + (at_ - run) > longest)
            return stop(Broken::too_long, at_);
        to.append(text_, run, at_ - run);
        if (at_ == text_.size())
            return stop_at_end();
        if (text_[at_] == '"') {
            ++at_;
            is_in_text_ = false;
            return true;
        }
        if (text_[at_] != '\\')
            return stop_at_sign();
        if (!escape(to))
            return false;
    }
}

/// Boost.JSON, which read this before, takes an escape at once where enough signs follow, and then tells a
/// wrong one at another place. The places are kept.
bool Scanner::is_taken_at_once(std::size_t u) const {
    return quoted_end(text_, text_begin_) - u > 10;
}

/// A number of four hexadecimal digits, in the escape whose u stands there.
bool Scanner::hex(std::size_t u, std::uint32_t& unit) {
    const std::string_view four = text_.substr(at_, 4);
    const std::size_t told_at = at_ == u + 1 ? u : at_;
    unit = 0;
    for (const char sign : four) {
        const int digit = hex_digit(sign);
        if (digit < 0 && is_taken_at_once(u)) {
            const auto right =
                std::count_if(four.begin(), four.end() - 1, [](char c) { return hex_digit(c) >= 0; });
            return stop(Broken::syntax, told_at + static_cast<std::size_t>(right));
        }
        if (digit < 0)
            return stop(Broken::syntax, at_);
        unit = unit << 4U | static_cast<std::uint32_t>(digit);
        ++at_;
    }
    return four.size() == 4 || stop_at_end();
}

bool Scanner::escape(std::string& to) {
    constexpr std::string_view letters = "\"\\/bfnrt";
    constexpr std::string_view meant = "\"\\/\b\f\n\r\t";
    if (++at_ == text_.size())
        return stop_at_end();
    if (const std::size_t which = letters.find(text_[at_]); which != std::string_view::npos) {
        to += meant[which];
        ++at_;
        return true;
    }
    if (text_[at_] != 'u')
        return stop(Broken::syntax, at_);
    const std::size_t u = at_++;
    std::uint32_t code = 0;
    if (!hex(u, code))
        return false;
    if (code >= 0xDC00 && code <= 0xDFFF)
        return stop(Broken::syntax, is_taken_at_once(u) ? u : at_);
    if (code >= 0xD800 && code <= 0xDBFF) {
        for (const char sign : {'\\', 'u'}) {
            if (at_ == text_.size())
                return stop_at_end();
            if (text_[at_] != sign)
                return stop(Broken::syntax, at_);
            ++at_;
        }
        const std::size_t first = at_;
        std::uint32_t second = 0;
        if (!hex(u, second))
            return false;
        if (second < 0xDC00 || second > 0xDFFF)
            return stop(Broken::syntax, is_taken_at_once(u) ? first : at_);
        code = 0x10000 + ((code - 0xD800) << 10U) + (second - 0xDC00);
    }
    put_character(to, code);
    return true;
}

} // namespace ringfill
