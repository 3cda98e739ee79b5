#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// How a cell of a workbook is shown.
enum class CellStyle { plain, strong, quantity, price, amount, strong_amount, share, whole };

/// A cell of a workbook. A text is never taken for a formula, whatever it begins with.
struct WorkbookCell {
    enum class Kind { empty, text, number, formula, text_formula };

    Kind kind = Kind::empty;
    CellStyle style = CellStyle::plain;
    std::string text = {}; ///< the text; of a formula what stands after its =
    double value = 0;      ///< the number, or what the formula gives now
    std::string told = {}; ///< what a formula gives now where that is a text
};

/// Where the sheet says which materials count, and the words it takes there; counted from 0.
constexpr std::size_t counts_row = 2;
constexpr std::size_t counts_column = 1;
constexpr const char* counts_words[] = {"packs", "use"};
/// The columns to print; those after them hold what is rounded.
constexpr std::size_t printed_columns = 6;

/// A quote as the cells of one sheet, row by row, with formulas that reckon as the program does: a changed
/// quantity, price, share or choice of what counts changes the total.
struct QuoteCells {
    std::vector<std::vector<WorkbookCell>> rows;
    int exponent = 2; ///< decimals of the currency
};

QuoteCells quote_cells(const std::string& title, const Quote& quote);

} // namespace ringfill
