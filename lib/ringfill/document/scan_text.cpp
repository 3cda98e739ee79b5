#include <ringfill/document/scan.hpp>

#include <algorithm>
#include <array>
#include <cstdint>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

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

int hex_digit(char c) {
    const char low = static_cast<char>(c | 0x20);
    return is_digit(c) ? c - '0' : low >= 'a' && low <= 'f' ? low - 'a' + 10 : -1;
}

/// Puts a character into a text as UTF-8.
void put_character(std::string& to, std::uint32_t code) {
    constexpr std::uint32_t lead[] = {0, 0xC0, 0xE0, 0xF0};
    std::uint32_t more = code < 0x80 ? 0 : code < 0x800 ? 1 : code < 0x10000 ? 2 : 3; // bytes behind the lead
    to += static_cast<char>(lead[more] | code >> 6 * more);
    while (more-- > 0)
        to += static_cast<char>(0x80U | (code >> 6 * more & 0x3FU));
}

} // namespace

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
        if (!sign('\\') || !sign('u'))
            return false;
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
