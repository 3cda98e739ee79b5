#include <ringfill/report/text/quote_text.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/frame.hpp>
#include <ringfill/report/text/sentence.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_item = 100;
constexpr std::size_t longest_note = 1'000;

/// A row of the table: what it is, and its cells to the right.
struct PriceRow {
    std::string name;
    std::vector<std::string> cells;
    bool strong = false;
    bool heading = false;
};

std::string upper(std::string_view words) {
    std::string text(words);
    for (char& c : text)
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return text;
}

std::string number_text(Thousandths quantity) {
    Decimal number{quantity, 3};
    while (number.decimals > 0 && number.digits % 10 == 0) {
        number.digits /= 10;
        --number.decimals;
    }
    return decimal_text(number);
}

/// One of many is told without the s.
std::string unit_text(const QuoteLine& line) {
    const bool counted = line.unit == "packs" || line.unit == "pieces";
    return counted && line.quantity == 1'000 ? line.unit.substr(0, line.unit.size() - 1) : line.unit;
}

PriceRow line_row(const QuoteLine& line, int exponent) {
    std::string quantity = line.quantity ? number_text(*line.quantity) : "?";
    std::string price = line.price ? decimal_text(*line.price, exponent) : "?";
    if (line.part)
        price = fmt::format("of {}", line.part->supplied ? number_text(*line.part->supplied) : "?");
    if (const std::string unit = unit_text(line); !unit.empty())
        quantity += ' ' + unit;
    return {printable(line.item, longest_item),
            {quantity, price, line.amount ? money_text(*line.amount, exponent) : std::string("missing")}};
}

void add_section(std::vector<PriceRow>& rows, const QuoteSection& section, int exponent) {
    const bool twice = section.part == QuotePart::packs || section.part == QuotePart::use;
    rows.push_back({upper(in_words(section.part)) + (section.counts ? "" : ", for comparison"),
                    {"quantity", section.part == QuotePart::use ? "of packs" : "price", "amount"},
                    true,
                    true});
    for (const QuoteLine& line : section.lines)
        rows.push_back(line_row(line, exponent));
    const bool part_only = std::any_of(section.lines.begin(), section.lines.end(),
                                       [](const QuoteLine& line) { return !line.amount; });
    if (section.sum && (section.lines.size() > 1 || twice))
        rows.push_back(
            {part_only ? "sum of what is known" : "sum", {"", "", money_text(*section.sum, exponent)}});
}

/// The names stand before the cells, or above them where they are too long for that.
std::string price_table(const std::vector<PriceRow>& rows, const Style& style) {
    const auto cells = rows | ranges::views::transform(&PriceRow::cells) | ranges::to<std::vector>();
    const auto lines = columns(cells, {true, true, true});
    std::size_t right = 0;
    for (const std::string& line : lines)
        right = std::max(right, count_characters(line));
    std::string text;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::string indent = rows[i].heading ? "" : "  ";
        if (rows[i].heading && i > 0)
            text += '\n';
        const std::size_t used = count_characters(indent + rows[i].name);
        std::string blanks(page_width - right, ' ');
        std::string row;
        if (used + 2 + right <= page_width) {
            blanks.resize(page_width - right - used);
            row = fmt::format("{}{}{}{}\n", indent, rows[i].name, blanks, lines[i]);
        } else {
            row = fmt::format("{}{}{}\n", wrapped(rows[i].name, indent), blanks, lines[i]);
        }
        text += rows[i].strong ? style.strong(row.substr(0, row.size() - 1)) + '\n' : row;
    }
    return text;
}

void add_total(std::vector<PriceRow>& rows, const Quote& quote, int exponent) {
    rows.push_back({"SUM", {"", "", money_text(*quote.subtotal, exponent)}, false, true});
    for (const OnTop& one : quote.on_top)
        rows.push_back(
            {fmt::format("{}, {} of {}", one.name, share_text(one.share), money_text(one.of, exponent)),
             {"", "", money_text(one.amount, exponent)}});
    rows.push_back({total_name(quote) + incomplete_text(quote),
                    {"", quote.currency.name, money_text(*quote.total, exponent)},
                    true,
                    false});
}

std::string list(const char* heading, const std::vector<std::string>& lines, const Style& style) {
    const auto shown = lines | ranges::views::transform(
                                   [](const std::string& line) { return printable(line, longest_note); });
    return lines.empty() ? "" : bullets(heading, shown | ranges::to<std::vector>(), style) + "\n";
}

} // namespace

std::string share_text(ExactShare share) {
    return number_text(share) + " %";
}

std::string total_name(const Quote& quote) {
    return quote.taxed ? "TOTAL" : "TOTAL without tax";
}

std::string incomplete_text(const Quote& quote) {
    return quote.is_whole() ? std::string() : fmt::format(", INCOMPLETE: {} missing", quote.missing.size());
}

std::string quote_text(const Plan& plan, const Style& style) {
    std::string text = style.strong(wrapped(printable(plan.title, 120), ""));
    if (!plan.quote)
        return text + "\n" +
               wrapped("There is no quote: the job gives no prices.currency. ringfill start --fields tells "
                       "what prices it may have.",
                       "") +
               closing_line();
    const Quote& quote = *plan.quote;
    const int exponent = quote.currency.exponent.value;
    const std::string total = quote.total
                                  ? fmt::format("{} {} {}", total_name(quote),
                                                money_text(*quote.total, exponent), quote.currency.name)
                                  : fmt::format("QUOTE in {}", quote.currency.name);
    text += wrapped(total + incomplete_text(quote), "");
    text += "\n" + list("MISSING, not in the total", quote.missing, style);
    std::vector<PriceRow> rows;
    for (const QuoteSection& section : quote.sections)
        add_section(rows, section, exponent);
    if (quote.total)
        add_total(rows, quote, exponent);
    text += price_table(rows, style) + "\n" + list("NOTES", quote.notes, style);
    text.pop_back(); // the closing line brings its own blank line
    return text + closing_line();
}

} // namespace ringfill
