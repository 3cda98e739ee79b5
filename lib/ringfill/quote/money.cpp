#include <ringfill/quote/money.hpp>

#include <numeric>
#include <stdexcept>

#include <ringfill/units/decimal.hpp>

namespace ringfill {

std::optional<Minor> half_even(std::int64_t n, std::int64_t p, std::int64_t d) {
    if (n < 0 || p < 0 || d < 1)
        throw std::logic_error("money is not negative, nor over nothing");
    if (p > 0 && n > most_product / p)
        return std::nullopt;
    const std::int64_t product = n * p;
    Minor amount = product / d;
    const std::int64_t rest = product % d;
    if (rest > d - rest || (rest == d - rest && amount % 2 == 1))
        ++amount;
    return amount > most_minor ? std::nullopt : std::optional(amount);
}

std::pair<std::int64_t, std::int64_t> lowest_terms(std::int64_t p, std::int64_t d) {
    const std::int64_t common = std::gcd(p, d);
    return {p / common, d / common};
}

std::optional<Minor> sum_of(const std::vector<Minor>& amounts) {
    Minor sum = 0;
    for (const Minor amount : amounts) {
        if (amount < 0)
            throw std::logic_error("money is not negative");
        if (amount > most_minor - sum)
            return std::nullopt;
        sum += amount;
    }
    return sum;
}

std::string money_text(Minor amount, int exponent) {
    return decimal_text({amount, exponent}, exponent);
}

} // namespace ringfill
