#include <ringfill/say/quote_words.hpp>

#include <fmt/format.h>

namespace ringfill {

std::string total_name(const Quote& quote) {
    return quote.taxed ? "TOTAL" : "TOTAL without tax";
}

std::string incomplete_text(const Quote& quote) {
    return quote.is_whole() ? "" : fmt::format(", INCOMPLETE: {} missing", quote.missing.size());
}

std::string number_text(Thousandths quantity) {
    Decimal number{quantity, 3};
    for (; number.decimals > 0 && number.digits % 10 == 0; --number.decimals)
        number.digits /= 10;
    return decimal_text(number);
}

std::string share_text(ExactShare share) {
    return number_text(share) + " %";
}

} // namespace ringfill
