#include <ringfill/report/csv/quote_csv.hpp>

#include <ringfill/report/csv/csv.hpp>
#include <ringfill/report/text/quote_text.hpp>

namespace ringfill {
namespace {

Cell number(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / 1000;
}

std::vector<Cell> line_row(const QuoteSection& section, const QuoteLine& line, const Currency& currency) {
    const int exponent = currency.exponent.value;
    return {std::string(in_words(section.part)),
            section.counts ? "yes" : "no",
            line.item,
            line.quantity ? number(*line.quantity) : Cell(std::string()),
            line.unit,
            line.part && line.part->supplied ? number(*line.part->supplied) : Cell(std::string()),
            line.price ? decimal_text(*line.price, exponent) : std::string(),
            line.amount ? money_text(*line.amount, exponent) : std::string(),
            currency.name,
            line.missing};
}

std::vector<Cell> sum_row(const std::string& name, const std::string& share, std::optional<Minor> amount,
                          const Currency& currency, const std::string& missing = {}) {
    const std::string none;
    const std::string told = amount ? money_text(*amount, currency.exponent.value) : none;
    return {name, "yes", none, none, none, none, share, told, currency.name, missing};
}

} // namespace

std::string quote_csv(const Plan& plan) {
    std::vector<std::vector<Cell>> rows{
        {"part", "counts", "item", "quantity", "unit", "of", "price", "amount", "currency", "missing"}};
    if (!plan.quote)
        return csv(rows);
    const Quote& quote = *plan.quote;
    for (const QuoteSection& section : quote.sections)
        for (const QuoteLine& line : section.lines)
            rows.push_back(line_row(section, line, quote.currency));
    if (quote.total) {
        rows.push_back(sum_row("sum", {}, *quote.subtotal, quote.currency));
        for (const OnTop& one : quote.on_top)
            rows.push_back(sum_row(one.name, share_text(one.share), one.amount, quote.currency));
    }
    rows.push_back(sum_row("total", {}, quote.total, quote.currency,
                           quote.is_whole() ? std::string() : total_name(quote) + incomplete_text(quote)));
    return csv(rows);
}

} // namespace ringfill
