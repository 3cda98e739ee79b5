#include <ringfill/report/csv/quote_cells.hpp>

#include <map>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/quote_text.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {
namespace {

using Row = std::vector<WorkbookCell>;

constexpr std::size_t longest_text = 1'000;
constexpr const char* counts_cell = "$B$3"; // at counts_row and counts_column

std::int64_t power_of_ten(int exponent) {
    std::int64_t power = 1;
    for (; exponent > 0; --exponent)
        power *= 10;
    return power;
}

WorkbookCell words(std::string_view text, CellStyle style = CellStyle::plain) {
    return {WorkbookCell::Kind::text, style, printable(text, longest_text)};
}

WorkbookCell number(double value, CellStyle style) {
    return {WorkbookCell::Kind::number, style, {}, value};
}

WorkbookCell formula(std::string text, double now, CellStyle style) {
    return {WorkbookCell::Kind::formula, style, std::move(text), now};
}

WorkbookCell formula_told(std::string text, std::string now, CellStyle style) {
    return {WorkbookCell::Kind::text_formula, style, std::move(text), 0, std::move(now)};
}

/// The sheet as it is filled, row after row. Columns: A item, B quantity or share, C unit, D price or what
/// the packs hold, E amount, F what is missing, G and H the whole numbers whose quotient is rounded.
class Filling {
  public:
    explicit Filling(const Quote& quote)
        : quote_(quote), small_(power_of_ten(quote.currency.exponent.value)) {}

    QuoteCells done() { return {std::move(rows_), quote_.currency.exponent.value}; }
    std::size_t row() const { return rows_.size() + 1; }
    void add(Row row) { rows_.push_back(std::move(row)); }

    double in_units(Minor amount) const { return static_cast<double>(amount) / static_cast<double>(small_); }
    std::int64_t small() const { return small_; }

    /// G over H, halves to the even one, in units of the currency.
    WorkbookCell amount(std::optional<Minor> now) const {
        const std::string text = fmt::format(
            "IF(ISNUMBER(G{0}),(INT(G{0}/H{0})+MIN(1,MAX(0,2*(G{0}-H{0}*INT(G{0}/H{0}))-H{0}+MOD(INT(G{0}/"
            "H{0}),2))))/{1},\"missing\")",
            row(), small_);
        return now ? formula(text, in_units(*now), CellStyle::amount)
                   : formula_told(text, "missing", CellStyle::amount);
    }

    /// A product of two whole numbers, or nothing where a condition does not hold or it is not exact.
    WorkbookCell product(const std::string& condition, const std::string& one, const std::string& other,
                         std::optional<double> now) const {
        const std::string text = fmt::format("IF({0},IF({1}*{2}<={3},{1}*{2},\"too large\"),\"\")", condition,
                                             one, other, most_product);
        return now ? formula(text, *now, CellStyle::whole) : formula_told(text, "", CellStyle::whole);
    }

    /// The sum of amounts, exact as whole small units, where anything is known.
    WorkbookCell sum(const std::string& known, const std::string& terms, std::optional<Minor> now,
                     CellStyle style) const {
        const std::string text =
            fmt::format("IF({},ROUND(({})*{},0)/{},\"missing\")", known, terms, small_, small_);
        return now ? formula(text, in_units(*now), style) : formula_told(text, "missing", style);
    }

  private:
    const Quote& quote_;
    std::int64_t small_;
    std::vector<Row> rows_;
};

void add_line(Filling& sheet, const QuoteLine& line, const Currency& currency, std::size_t first_pack_row) {
    const std::size_t row = sheet.row();
    const std::string thousandths_of_b = fmt::format("ROUND(B{}*1000,0)", row);
    Row cells{words(line.item),
              line.quantity ? number(static_cast<double>(*line.quantity) / 1000, CellStyle::quantity)
                            : WorkbookCell{},
              words(line.unit)};
    std::optional<double> now;
    if (line.part) {
        const std::string packs = fmt::format("E{}:E{}", first_pack_row + line.part->first,
                                              first_pack_row + line.part->first + line.part->lines - 1);
        if (line.amount)
            now = static_cast<double>(*line.quantity) * static_cast<double>(*line.part->cost);
        const double supplied = static_cast<double>(line.part->supplied.value_or(0));
        cells.push_back(line.part->supplied ? number(supplied / 1000, CellStyle::quantity)
                                            : WorkbookCell{WorkbookCell::Kind::empty, CellStyle::quantity});
        cells.push_back(sheet.amount(line.amount));
        cells.push_back(words(line.missing));
        cells.push_back(sheet.product(fmt::format("AND(COUNT({})={},N(D{})>0)", packs, line.part->lines, row),
                                      thousandths_of_b,
                                      fmt::format("ROUND(SUM({})*{},0)", packs, sheet.small()), now));
        cells.push_back(formula(fmt::format("ROUND(D{}*1000,0)", row), supplied, CellStyle::whole));
    } else {
        const int decimals = currency.exponent.value + price_decimals_more;
        if (line.amount)
            now = static_cast<double>(*line.quantity) * static_cast<double>(*in_parts(*line.price, decimals));
        cells.push_back(line.price ? number(as_double(*line.price), CellStyle::price)
                                   : WorkbookCell{WorkbookCell::Kind::empty, CellStyle::price});
        cells.push_back(sheet.amount(line.amount));
        cells.push_back(words(line.missing));
        cells.push_back(sheet.product(fmt::format("AND(COUNT(B{0},D{0})=2,MIN(B{0},D{0})>=0)", row),
                                      thousandths_of_b,
                                      fmt::format("ROUND(D{}*{},0)", row, power_of_ten(decimals)), now));
        cells.push_back(number(static_cast<double>(line_parts), CellStyle::whole));
    }
    sheet.add(std::move(cells));
}

/// The heading, the lines and the sum of a section; the row of the sum.
std::size_t add_section(Filling& sheet, const QuoteSection& section, const Currency& currency,
                        std::size_t first_pack_row) {
    const bool use = section.part == QuotePart::use;
    sheet.add({});
    sheet.add({words(in_words(section.part), CellStyle::strong), words("quantity", CellStyle::strong),
               words("unit", CellStyle::strong), words(use ? "of packs" : "price", CellStyle::strong),
               words("amount", CellStyle::strong), words("missing when it was written", CellStyle::strong),
               words("product", CellStyle::strong), words("parts", CellStyle::strong)});
    const std::size_t first = sheet.row();
    for (const QuoteLine& line : section.lines)
        add_line(sheet, line, currency, first_pack_row);
    const std::size_t row = sheet.row();
    sheet.add({words("sum"),
               {},
               {},
               {},
               sheet.sum(fmt::format("COUNT(E{}:E{})>0", first, row - 1),
                         fmt::format("SUM(E{}:E{})", first, row - 1), section.sum, CellStyle::amount)});
    return row;
}

void add_total(Filling& sheet, const Quote& quote, const std::map<QuotePart, std::size_t>& sums,
               std::size_t first_row) {
    std::string terms;
    std::string cells;
    for (const auto& [part, row] : sums) {
        cells += fmt::format("{}E{}", cells.empty() ? "" : ",", row);
        const std::string plus = terms.empty() ? "" : "+";
        if (part == QuotePart::packs)
            terms +=
                fmt::format("{}N(IF({}=\"use\",E{},E{}))", plus, counts_cell, sums.at(QuotePart::use), row);
        else if (part != QuotePart::use)
            terms += fmt::format("{}N(E{})", plus, row);
    }
    sheet.add({});
    const std::string known = fmt::format("ISNUMBER(E{})", sheet.row());
    std::string all = fmt::format("N(E{})", sheet.row());
    sheet.add({words("SUM", CellStyle::strong),
               {},
               {},
               {},
               sheet.sum(fmt::format("COUNT({})>0", cells), terms, quote.subtotal, CellStyle::amount)});
    for (const OnTop& one : quote.on_top) {
        const std::size_t row = sheet.row();
        const auto [parts, whole] = lowest_terms(one.share, whole_share);
        sheet.add({words(one.name),
                   number(static_cast<double>(one.share) / whole_share, CellStyle::share),
                   words("of what stands above"),
                   {},
                   sheet.amount(one.amount),
                   {},
                   sheet.product(fmt::format("AND({},ISNUMBER(B{}))", known, row),
                                 fmt::format("ROUND(({})*{},0)", all, sheet.small()),
                                 fmt::format("ROUND(B{0}*H{0},0)", row),
                                 static_cast<double>(one.of) * static_cast<double>(parts)),
                   formula(fmt::format("{0}/GCD(ROUND(B{1}*{0},0),{0})", whole_share, row),
                           static_cast<double>(whole), CellStyle::whole)});
        all += fmt::format("+N(E{})", row);
    }
    const std::size_t last_row = sheet.row() - 1; // a share that is blanked is missing too
    const std::string name = total_name(quote);
    sheet.add({formula_told(fmt::format("\"{}\"&IF(COUNTIF(E{}:E{},\"missing\")>0,\", INCOMPLETE\",\"\")",
                                        name, first_row, last_row),
                            quote.is_whole() ? name : name + ", INCOMPLETE", CellStyle::strong),
               {},
               {},
               words(quote.currency.name, CellStyle::strong),
               sheet.sum(known, all, quote.total, CellStyle::strong_amount)});
}

} // namespace

QuoteCells quote_cells(const std::string& title, const Quote& quote) {
    Filling sheet(quote);
    bool by_use = false;
    for (const QuoteSection& section : quote.sections)
        by_use = by_use || (section.part == QuotePart::use && section.counts);
    sheet.add({words(title, CellStyle::strong)});
    sheet.add({words(fmt::format("Quote in {}. Change quantities, prices and shares; every amount follows.",
                                 quote.currency.name))});
    sheet.add(
        {words("materials that count: packs or use"), words(by_use ? "use" : "packs", CellStyle::strong)});
    const std::size_t first_row = sheet.row();
    const std::size_t first_pack_row = first_row + 2; // a blank row and the heading stand before it
    std::map<QuotePart, std::size_t> sums;
    for (const QuoteSection& section : quote.sections)
        sums[section.part] = add_section(sheet, section, quote.currency, first_pack_row);
    add_total(sheet, quote, sums, first_row);
    sheet.add({});
    for (const std::string& note : quote.notes)
        sheet.add({words(note)});
    sheet.add({words(fmt::format("A price may have {} decimals; what is typed beyond them is rounded.",
                                 quote.currency.exponent.value + price_decimals_more))});
    sheet.add({words(closing())});
    return sheet.done();
}

} // namespace ringfill
