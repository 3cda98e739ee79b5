#include <ringfill/report/csv/quote_cells.hpp>

#include <map>

#include <fmt/format.h>

#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/report/json/members.hpp>
#include <ringfill/say/quote_words.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {
namespace {

constexpr std::size_t longest_text = 1'000;
constexpr const char* counts_cell = "$B$3"; // at counts_row and counts_column

std::int64_t power_of_ten(int exponent) {
    return exponent > 0 ? 10 * power_of_ten(exponent - 1) : 1;
}

WorkbookCell words(std::string_view text, CellStyle style = CellStyle::plain) {
    return {WorkbookCell::Kind::text, style, printable(text, longest_text)};
}

WorkbookCell strong(std::string_view text) {
    return words(text, CellStyle::strong);
}

WorkbookCell number(std::optional<double> value, CellStyle style) {
    return {value ? WorkbookCell::Kind::number : WorkbookCell::Kind::empty, style, {}, value.value_or(0)};
}

/// @param now what it gives; nothing: the text `told`.
WorkbookCell formula(std::string text, std::optional<double> now, CellStyle style, std::string told = {}) {
    return {now ? WorkbookCell::Kind::formula : WorkbookCell::Kind::text_formula, style, std::move(text),
            now.value_or(0), std::move(told)};
}

/// The sheet as it is filled, row after row. Columns: A item, B quantity or share, C unit, D price or what
/// the packs hold, E amount, F what is missing, G and H the whole numbers whose quotient is rounded.
struct Filling {
    int exponent;                                ///< of the currency
    std::int64_t small = power_of_ten(exponent); ///< smallest units in one of the currency
    std::vector<std::vector<WorkbookCell>> rows = {};

    std::size_t row() const { return rows.size() + 1; }
    void add_sum(const WorkbookCell& name, const WorkbookCell& sum, const WorkbookCell& unit = {}) {
        add(name, WorkbookCell{}, WorkbookCell{}, unit, sum);
    }
    template <class... Cells>
    void add(const Cells&... cells) {
        rows.push_back({cells...});
    }

    int price_decimals() const { return exponent + price_decimals_more; }

    /// An amount, in units of the currency now.
    WorkbookCell amount(std::string text, std::optional<Minor> now, CellStyle style) const {
        const auto in_currency = [&](Minor minor) {
            return static_cast<double>(minor) / static_cast<double>(small);
        };
        return formula(std::move(text), given(now, in_currency), style, now ? "" : "missing");
    }

    /// G over H, halves to the even one, in units of the currency.
    WorkbookCell quotient(std::optional<Minor> now) const {
        return amount(fmt::format("IF(ISNUMBER(G{0}),(INT(G{0}/H{0})+MIN(1,MAX(0,2*(G{0}-H{0}*INT(G{0}/"
                                  "H{0}))-H{0}+MOD(INT(G{0}/H{0}),2))))/{1},\"missing\")",
                                  row(), small),
                      now, CellStyle::amount);
    }

    /// A product of two whole numbers, or nothing where a condition does not hold or it is not exact.
    WorkbookCell product(const std::string& condition, const std::string& one, const std::string& other,
                         std::optional<double> now) const {
        return formula(fmt::format("IF({0},IF({1}*{2}<={3},{1}*{2},\"too large\"),\"\")", condition, one,
                                   other, most_product),
                       now, CellStyle::whole);
    }

    /// A line of a section. @param condition of its product of quantity and `factor`, which is over `parts`.
    void add_line(const QuoteLine& line, const WorkbookCell& price, const std::string& condition,
                  const std::string& factor, double factor_now, const WorkbookCell& parts) {
        const auto now =
            when(line.amount.has_value(), [&] { return static_cast<double>(*line.quantity) * factor_now; });
        add(words(line.item), number(given(line.quantity, in_units), CellStyle::quantity), words(line.unit),
            price, quotient(line.amount), words(line.missing),
            product(condition, fmt::format("ROUND(B{}*1000,0)", row()), factor, now), parts);
    }

    /// The sum of amounts, exact as whole small units, where anything is known.
    WorkbookCell sum(const std::string& known, const std::string& terms, std::optional<Minor> now,
                     CellStyle style = CellStyle::amount) const {
        return amount(fmt::format("IF({},ROUND(({})*{},0)/{},\"missing\")", known, terms, small, small), now,
                      style);
    }
};

void add_part_of_packs(Filling& sheet, const QuoteLine& line, std::size_t first_pack_row) {
    const ShareOfPacks& part = *line.part;
    const std::size_t first = first_pack_row + part.first;
    const std::string packs = fmt::format("E{}:E{}", first, first + part.lines - 1);
    sheet.add_line(line, number(given(part.supplied, in_units), CellStyle::quantity),
                   fmt::format("AND(COUNT({})={},N(D{})>0)", packs, part.lines, sheet.row()),
                   fmt::format("ROUND(SUM({})*{},0)", packs, sheet.small),
                   static_cast<double>(part.cost.value_or(0)),
                   formula(fmt::format("ROUND(D{}*1000,0)", sheet.row()),
                           static_cast<double>(part.supplied.value_or(0)), CellStyle::whole));
}

void add_priced(Filling& sheet, const QuoteLine& line) {
    const int decimals = sheet.price_decimals();
    sheet.add_line(line, number(given(line.price, as_double), CellStyle::price),
                   fmt::format("AND(COUNT(B{0},D{0})=2,MIN(B{0},D{0})>=0)", sheet.row()),
                   fmt::format("ROUND(D{}*{},0)", sheet.row(), power_of_ten(decimals)),
                   line.amount ? static_cast<double>(*in_parts(*line.price, decimals)) : 0,
                   number(line_parts, CellStyle::whole));
}

/// The heading, the lines and the sum of a section; the row of the sum.
std::size_t add_section(Filling& sheet, const QuoteSection& section, std::size_t first_pack_row) {
    sheet.add();
    sheet.add(strong(word_of(section.part)), strong("quantity"), strong("unit"),
              strong(section.part == QuotePart::use ? "of packs" : "price"), strong("amount"),
              strong("missing when it was written"), strong("product"), strong("parts"));
    const std::size_t first = sheet.row();
    for (const QuoteLine& line : section.lines)
        line.part ? add_part_of_packs(sheet, line, first_pack_row) : add_priced(sheet, line);
    const std::size_t row = sheet.row();
    const std::string amounts = fmt::format("E{}:E{}", first, row - 1);
    sheet.add_sum(words("sum"), sheet.sum(fmt::format("COUNT({})>0", amounts),
                                          fmt::format("SUM({})", amounts), section.sum));
    return row;
}

void add_total(Filling& sheet, const Quote& quote, const std::map<QuotePart, std::size_t>& sums,
               std::size_t first_row) {
    const std::string cells =
        listed(sums, ",", [](const auto& sum) { return fmt::format("E{}", sum.second); });
    std::string terms;
    for (const auto& [part, row] : sums)
        if (part != QuotePart::use)
            terms += (terms.empty() ? "N(" : "+N(") +
                     (part == QuotePart::packs
                          ? fmt::format("IF({}=\"use\",E{},E{}))", counts_cell, sums.at(QuotePart::use), row)
                          : fmt::format("E{})", row));
    sheet.add();
    const std::string known = fmt::format("ISNUMBER(E{})", sheet.row());
    std::string all = fmt::format("N(E{})", sheet.row());
    sheet.add_sum(strong("SUM"), sheet.sum(fmt::format("COUNT({})>0", cells), terms, quote.subtotal));
    for (const OnTop& top : quote.on_top) {
        const std::size_t row = sheet.row();
        const auto [parts, whole] = lowest_terms(top.share, whole_share);
        sheet.add(words(top.name), number(static_cast<double>(top.share) / whole_share, CellStyle::share),
                  words("of what stands above"), WorkbookCell{}, sheet.quotient(top.amount), WorkbookCell{},
                  sheet.product(fmt::format("AND({},ISNUMBER(B{}))", known, row),
                                fmt::format("ROUND(({})*{},0)", all, sheet.small),
                                fmt::format("ROUND(B{0}*H{0},0)", row),
                                static_cast<double>(top.before) * static_cast<double>(parts)),
                  formula(fmt::format("{0}/GCD(ROUND(B{1}*{0},0),{0})", whole_share, row),
                          static_cast<double>(whole), CellStyle::whole));
        all += fmt::format("+N(E{})", row);
    }
    const std::size_t last_row = sheet.row() - 1; // a share that is blanked is missing too
    const std::string name = total_name(quote);
    const std::string counted = fmt::format("\"{}\"&IF(COUNTIF(E{}:E{},\"missing\")>0,\", INCOMPLETE\",\"\")",
                                            name, first_row, last_row);
    sheet.add_sum(
        formula(counted, std::nullopt, CellStyle::strong, quote.is_whole() ? name : name + ", INCOMPLETE"),
        sheet.sum(known, all, quote.total, CellStyle::strong_amount), strong(quote.currency.name));
}

} // namespace

QuoteCells quote_cells(const std::string& title, const Quote& quote) {
    Filling sheet{quote.currency.exponent.value};
    const bool by_use = ranges::any_of(quote.sections, [](const QuoteSection& section) {
        return section.part == QuotePart::use && section.counts;
    });
    sheet.add(strong(title));
    sheet.add(words(fmt::format("Quote in {}. Change quantities, prices and shares; every amount follows.",
                                quote.currency.name)));
    sheet.add(words("materials that count: packs or use"), strong(by_use ? "use" : "packs"));
    const std::size_t first_row = sheet.row();
    const std::size_t first_pack_row = first_row + 2; // a blank row and the heading stand before it
    std::map<QuotePart, std::size_t> sums;
    for (const QuoteSection& section : quote.sections)
        sums[section.part] = add_section(sheet, section, first_pack_row);
    add_total(sheet, quote, sums, first_row);
    sheet.add();
    for (const std::string& note : quote.notes)
        sheet.add(words(note));
    sheet.add(words(fmt::format("A price may have {} decimals; what is typed beyond them is rounded.",
                                sheet.price_decimals())));
    sheet.add(words(closing()));
    return {std::move(sheet.rows), sheet.exponent};
}

} // namespace ringfill
