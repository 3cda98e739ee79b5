#include <cmath>

#include <fmt/format.h>

#include <range/v3/action/push_back.hpp>
#include <range/v3/view/enumerate.hpp>

#include <ringfill/quote/quote.hpp>

namespace ringfill {
namespace {

/// Halves to the even one, of whole numbers.
constexpr const char* half_even_formula =
    "floor(n*p/d) + min(1, max(0, 2*(n*p - d*floor(n*p/d)) - d + mod(floor(n*p/d), 2)))";

double as_number(std::int64_t whole) {
    return static_cast<double>(whole);
}

Working rounded(std::string figure, const Input& n, const Input& p, std::int64_t d, Minor amount,
                const std::string& unit) {
    return worked(std::move(figure), half_even_formula, {n, p, {"d", d}}, {as_number(amount), unit});
}

/// "0.01 EUR": so many decimals of a currency.
std::string unit_of(const Currency& currency, int decimals) {
    return fmt::format("{} {}", decimal_text({1, decimals}), currency.name);
}

std::vector<Working> line_working(const QuoteLine& line, const Currency& currency,
                                  const std::string& smallest) {
    std::vector<Working> work;
    if (line.quantity)
        work.push_back(worked("quantity", "floor(1000*q + 0.5)/1000", {{"q", line.measured, line.unit}},
                              {as_number(*line.quantity) / 1000, line.unit}));
    if (line.part && line.part->supplied)
        work.push_back(worked("of", "s/1000", {{"s", as_number(*line.part->supplied), "0.001 " + line.unit}},
                              {as_number(*line.part->supplied) / 1000, line.unit}));
    if (!line.amount)
        return work;
    const Input n{"n", as_number(*line.quantity), "0.001 " + line.unit};
    const int decimals = currency.exponent.value + price_decimals_more;
    const Input p =
        line.part ? Input{"p", as_number(*line.part->cost), smallest}
                  : Input{"p", as_number(*in_parts(*line.price, decimals)), unit_of(currency, decimals)};
    work.push_back(
        rounded("amount_minor", n, p, line.part ? *line.part->supplied : line_parts, *line.amount, smallest));
    return work;
}

Working sum_working(std::string figure, const std::vector<double>& amounts, Minor sum,
                    const std::string& smallest) {
    return worked(std::move(figure), "sum(a)", {{"a", amounts, smallest}}, {as_number(sum), smallest});
}

} // namespace

std::vector<Working> quote_working(const Quote& quote) {
    const std::string smallest = unit_of(quote.currency, quote.currency.exponent.value);
    const double exponent = quote.currency.exponent.value;
    std::vector<Working> work{
        {"exponent", "1*e", {{"e", exponent}}, exponent, "", quote.currency.exponent.source}};
    std::vector<double> sums;
    for (const auto& [i, section] : ranges::views::enumerate(quote.sections)) {
        const std::string path = element_path("sections", i);
        std::vector<double> amounts;
        for (const auto& [j, line] : ranges::views::enumerate(section.lines)) {
            ranges::push_back(
                work, under(element_path(path + ".lines", j), line_working(line, quote.currency, smallest)));
            if (line.amount)
                amounts.push_back(as_number(*line.amount));
        }
        if (section.sum)
            work.push_back(sum_working(path + ".sum_minor", amounts, *section.sum, smallest));
        if (section.sum && section.counts)
            sums.push_back(as_number(*section.sum));
    }
    if (!quote.subtotal)
        return under("quote", std::move(work));
    work.push_back(sum_working("subtotal_minor", sums, *quote.subtotal, smallest));
    std::vector<double> all{as_number(*quote.subtotal)};
    for (const auto& [i, one] : ranges::views::enumerate(quote.on_top)) {
        const std::string path = element_path("on_top", i);
        const double share = as_number(one.share);
        work.push_back({path + ".share", "s/100000", {{"s", share}}, share / whole_share, "", "job"});
        const auto [parts, whole] = lowest_terms(one.share, whole_share);
        work.push_back(rounded(path + ".amount_minor", {"n", as_number(one.before), smallest},
                               {"p", as_number(parts)}, whole, one.amount, smallest));
        all.push_back(as_number(one.amount));
    }
    work.push_back(sum_working("total_minor", all, *quote.total, smallest));
    return under("quote", std::move(work));
}

} // namespace ringfill
