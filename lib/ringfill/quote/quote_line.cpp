#include <ringfill/quote/quote_line.hpp>

#include <cmath>
#include <stdexcept>

#include <fmt/format.h>

#include <range/v3/algorithm/contains.hpp>

namespace ringfill {

Thousandths thousandths(double value) {
    constexpr double most = 1e12;
    if (!(value >= 0 && value < most))
        throw std::logic_error("no quantity of a quote");
    return static_cast<Thousandths>(std::floor(1000 * value + 0.5));
}

QuoteLine line_of(std::string item, std::optional<double> quantity, std::string unit, std::string missing) {
    QuoteLine line{std::move(item), {}, quantity.value_or(0), std::move(unit)};
    if (quantity)
        line.quantity = thousandths(*quantity);
    line.missing = std::move(missing);
    return line;
}

void add_fault(std::vector<Fault>& faults, Fault fault) {
    if (!ranges::contains(faults, to_string(fault), [](const Fault& one) { return to_string(one); }))
        faults.push_back(std::move(fault));
}

Fault too_large(std::string path, std::string what) {
    return fault_at_path(std::move(path), std::move(what), "makes an amount too large to be told exactly",
                         "check the prices and the currency");
}

QuoteLine priced(QuoteLine line, const PriceAt& at, const Currency& currency, std::vector<Fault>& faults) {
    line.price = at.price;
    line.price_path = at.path;
    if (!at.price) {
        line.missing += fmt::format("{}price: write {}", line.missing.empty() ? "" : "; ",
                                    at.as_shown.empty() ? at.path : at.as_shown);
        return line;
    }
    const int decimals = currency.exponent.value + price_decimals_more;
    const auto parts = in_parts(*at.price, decimals);
    if (!parts) {
        line.missing = "price";
        add_fault(faults, fault_at_path(at.path, decimal_text(*at.price),
                                        fmt::format("has more than {} decimals", decimals),
                                        fmt::format("round it: {} has {}, and a price may have two more",
                                                    currency.name, currency.exponent.value)));
        return line;
    }
    if (!line.quantity)
        return line;
    line.amount = half_even(*line.quantity, *parts, line_parts);
    if (!line.amount) {
        line.missing = "amount";
        add_fault(faults, too_large(at.path));
    }
    return line;
}

} // namespace ringfill
