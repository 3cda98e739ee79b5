#include <ringfill/table/named_numbers.hpp>

#include <ringfill/units/decimal.hpp>

namespace ringfill {
namespace {

bool is_digit_sign(char c) {
    return c >= '0' && c <= '9';
}

/// Letters, and the bytes of signs outside ASCII, such as the degree sign.
bool is_of_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

} // namespace

std::vector<NamedNumber> numbers_in(std::string_view name) {
    std::vector<NamedNumber> found;
    for (std::size_t at = 0; at < name.size();) {
        std::size_t end = at;
        while (end < name.size() && (is_digit_sign(name[end]) || (name[end] == '.' && end > at)))
            ++end;
        if (end == at || (at > 0 && (is_of_word(name[at - 1]) || name[at - 1] == '-'))) {
            at = std::max(end, at + 1);
            continue;
        }
        std::size_t word = end;
        while (word < name.size() && name[word] == ' ')
            ++word;
        std::size_t word_end = word;
        while (word_end < name.size() && is_of_word(name[word_end]))
            ++word_end;
        if (const auto number = decimal_of(name.substr(at, end - at)))
            found.push_back({as_double(*number), name.substr(word, word_end - word)});
        at = end;
    }
    return found;
}

} // namespace ringfill
