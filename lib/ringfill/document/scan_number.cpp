#include <ringfill/document/scan.hpp>

#include <algorithm>
#include <climits>
#include <cmath>
#include <cstdint>
#include <optional>

#include <boost/json/stream_parser.hpp>

#include <ringfill/document/number_text.hpp>
#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

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

} // namespace

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
    if (is_open_comment(at_))
        return stop_at_end();
    if (!std::isfinite(*read) && faults_.size() < most_faults)
        faults_.push_back(fault_at(document_, begin, path(), printable(text_.substr(begin, at_ - begin), 60),
                                   "is too large to be a number here", "write the value you measured"));
    to.held = std::isfinite(*read) ? *read : 0.0;
    return count(at_);
}

} // namespace ringfill
