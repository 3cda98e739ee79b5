#include <ringfill/report/text/quote_text.hpp>

#include <algorithm>

#include <boost/algorithm/string/case_conv.hpp>

#include <fmt/format.h>

#include <range/v3/algorithm/all_of.hpp>
#include <range/v3/algorithm/max.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>
#include <range/v3/view/zip.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/view.hpp>
#include <ringfill/say/quote_words.hpp>

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

PriceRow line_row(const QuoteLine& line, int exponent) {
    const auto known = [](const auto& value, const auto& text) {
        return value ? text(*value) : std::string("?");
    };
    const auto price = [&](const Decimal& value) { return decimal_text(value, exponent); };
    std::string unit = line.unit.empty() ? "" : " " + line.unit;
    if ((line.unit == "packs" || line.unit == "pieces") && line.quantity == 1'000)
        unit.pop_back(); // one of them
    return {printable(line.item, longest_item),
            {known(line.quantity, number_text) + unit,
             line.part ? "of " + known(line.part->supplied, number_text) : known(line.price, price),
             line.amount ? money_text(*line.amount, exponent) : "missing"}};
}

void add_section(std::vector<PriceRow>& rows, const QuoteSection& section, int exponent) {
    const bool is_use = section.part == QuotePart::use;
    rows.push_back({boost::to_upper_copy(std::string(word_of(section.part)), std::locale::classic()) +
                        (section.counts ? "" : ", for comparison"),
                    {"quantity", is_use ? "of packs" : "price", "amount"},
                    true,
                    true});
    for (const QuoteLine& line : section.lines)
        rows.push_back(line_row(line, exponent));
    const bool is_whole =
        ranges::all_of(section.lines, [](const QuoteLine& line) { return line.amount.has_value(); });
    if (section.sum && (section.lines.size() > 1 || is_use || section.part == QuotePart::packs))
        rows.push_back(
            {is_whole ? "sum" : "sum of what is known", {"", "", money_text(*section.sum, exponent)}});
}

/// The names stand before the cells, or above them where they are too long for that.
std::string price_table(const std::vector<PriceRow>& rows, const Style& style) {
    const auto lines = columns(rows | ranges::views::transform(&PriceRow::cells) | ranges::to<std::vector>(),
                               {true, true, true});
    const std::size_t right = ranges::max(lines | ranges::views::transform(count_characters));
    std::string text;
    for (const auto& [row, line] : ranges::views::zip(rows, lines)) {
        const std::string indent = row.heading ? "" : "  ";
        if (row.heading && &row != &rows.front())
            text += '\n';
        const std::size_t used = count_characters(indent + row.name);
        const bool beside = used + 2 + right <= page_width;
        const std::string shown = (beside ? indent + row.name : wrapped(row.name, indent)) +
                                  std::string(page_width - right - (beside ? used : 0), ' ') + line;
        text += (row.strong ? style.strong(shown) : shown) + '\n';
    }
    return text;
}

std::string note_list(const char* heading, const std::vector<std::string>& notes, const Style& style) {
    const auto shown = [](const std::string& note) { return printable(note, longest_note); };
    return notes.empty() ? "" : "\n" + bullets(heading, style, notes, shown);
}

} // namespace

std::string quote_text(const Plan& plan, const Style& style) {
    const std::string title = view_title(plan, style, 120) + doubt_head(plan, style);
    if (!plan.quote)
        return title + "\n" +
               wrapped("There is no quote: the job gives no prices.currency. ringfill start --fields tells "
                       "what prices it may have.",
                       "") +
               closing_line();
    const Quote& quote = *plan.quote;
    const int exponent = quote.currency.exponent.value;
    const auto money = [&](Minor amount) { return money_text(amount, exponent); };
    std::vector<PriceRow> rows;
    for (const QuoteSection& section : quote.sections)
        add_section(rows, section, exponent);
    std::string head = "QUOTE in " + quote.currency.name;
    if (quote.total) {
        head = fmt::format("{} {} {}", total_name(quote), money(*quote.total), quote.currency.name);
        rows.push_back({"SUM", {"", "", money(*quote.subtotal)}, false, true});
        for (const OnTop& top : quote.on_top)
            rows.push_back({fmt::format("{}, {} of {}", top.name, share_text(top.share), money(top.before)),
                            {"", "", money(top.amount)}});
        rows.push_back({total_name(quote) + incomplete_text(quote),
                        {"", quote.currency.name, money(*quote.total)},
                        true});
    }
    return title + wrapped(head + incomplete_text(quote), "") +
           note_list("MISSING, not in the total", quote.missing, style) + "\n" + price_table(rows, style) +
           note_list("NOTES", quote.notes, style) + closing_line();
}

} // namespace ringfill
