#include "workbook_part.hpp"

#include <exception>
#include <map>
#include <string>

#include <xlsxwriter.h>

#include <fmt/format.h>

#include <ringfill/version.hpp>

#include "own_names.hpp"

namespace ringfill::cli {
namespace {

constexpr double column_widths[] = {50, 12, 12, 14, 14, 50, 20, 10};

std::string money_format(int exponent, int more) {
    std::string format = "#,##0";
    if (exponent > 0)
        format += '.' + std::string(static_cast<std::size_t>(exponent), '0');
    return exponent > 0 ? format + std::string(static_cast<std::size_t>(more), '#') : format;
}

void use_own_font(lxw_format* format) {
    format_set_font_name(format, own_font);
    format_set_font_size(format, 10);
}

/// The formats of the styles; General where a currency without decimals has prices with some.
std::map<CellStyle, lxw_format*> formats(lxw_workbook* book, int exponent) {
    lxw_format* const usual = STAILQ_FIRST(book->formats); // of every cell that has no other
    use_own_font(usual);
    std::map<CellStyle, lxw_format*> made{{CellStyle::plain, usual}, {CellStyle::quantity, usual}};
    for (const CellStyle style : {CellStyle::strong, CellStyle::price, CellStyle::amount,
                                  CellStyle::strong_amount, CellStyle::share, CellStyle::whole})
        use_own_font(made[style] = workbook_add_format(book));
    format_set_bold(made[CellStyle::strong]);
    format_set_bold(made[CellStyle::strong_amount]);
    if (exponent > 0)
        format_set_num_format(made[CellStyle::price], money_format(exponent, 2).c_str());
    format_set_num_format(made[CellStyle::amount], money_format(exponent, 0).c_str());
    format_set_num_format(made[CellStyle::strong_amount], money_format(exponent, 0).c_str());
    format_set_num_format(made[CellStyle::share], "0.0##%");
    format_set_font_color(made[CellStyle::whole], LXW_COLOR_GRAY);
    return made;
}

lxw_error put(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, const WorkbookCell& cell,
              lxw_format* format) {
    const std::string formula = "=" + cell.text;
    switch (cell.kind) {
    case WorkbookCell::Kind::empty:
        return worksheet_write_blank(sheet, row, column, format);
    case WorkbookCell::Kind::text:
        return worksheet_write_string(sheet, row, column, cell.text.c_str(), format);
    case WorkbookCell::Kind::number:
        return worksheet_write_number(sheet, row, column, cell.value, format);
    case WorkbookCell::Kind::formula:
        return worksheet_write_formula_num(sheet, row, column, formula.c_str(), format, cell.value);
    case WorkbookCell::Kind::text_formula:
        break;
    }
    return worksheet_write_formula_str(sheet, row, column, formula.c_str(), format, cell.told.c_str());
}

/// One page wide, without the columns that only reckon; what counts is chosen, not typed.
lxw_error lay_out(lxw_worksheet* sheet, std::size_t rows) {
    lxw_col_t column = 0;
    for (const double width : column_widths) {
        worksheet_set_column(sheet, column, column, width, nullptr);
        ++column;
    }
    worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    std::string packs = counts_words[0];
    std::string use = counts_words[1];
    char* words[] = {packs.data(), use.data(), nullptr};
    lxw_data_validation choice = {};
    choice.validate = LXW_VALIDATION_TYPE_LIST;
    choice.value_list = words;
    const lxw_error error =
        worksheet_data_validation_cell(sheet, counts_row, lxw_col_t{counts_column}, &choice);
    return error == LXW_NO_ERROR ? worksheet_print_area(sheet, 0, 0, static_cast<lxw_row_t>(rows - 1),
                                                        lxw_col_t{printed_columns - 1})
                                 : error;
}

/// Writes the file; what is wrong, or nothing.
lxw_error write(const QuoteCells& cells, const char* file, std::string folder) {
    lxw_workbook_options options = {};
    options.tmpdir = folder.data();
    lxw_workbook* book = workbook_new_opt(file, &options);
    if (!book)
        return LXW_ERROR_CREATING_XLSX_FILE;
    std::string author = fmt::format("ringfill {}", version);
    lxw_doc_properties properties = {};
    properties.author = author.data();
    workbook_set_properties(book, &properties);
    lxw_worksheet* sheet = workbook_add_worksheet(book, "Quote");
    const auto styles = formats(book, cells.exponent);
    lxw_error error = lay_out(sheet, cells.rows.size());
    for (std::size_t row = 0; row < cells.rows.size(); ++row)
        for (std::size_t column = 0; column < cells.rows[row].size(); ++column) {
            const WorkbookCell& cell = cells.rows[row][column];
            const lxw_error put_error = put(sheet, static_cast<lxw_row_t>(row),
                                            static_cast<lxw_col_t>(column), cell, styles.at(cell.style));
            error = error == LXW_NO_ERROR ? put_error : error;
        }
    const lxw_error closed = workbook_close(book);
    return error == LXW_NO_ERROR ? closed : error;
}

} // namespace
} // namespace ringfill::cli

const char* ringfill_write_workbook(const ringfill::QuoteCells& cells, const char* file, const char* folder,
                                    const char* version) noexcept {
    try {
        if (std::string_view(version) != ringfill::version)
            return "ringfill_workbook.part is of another version";
        if (const lxw_error error = ringfill::cli::write(cells, file, folder); error != LXW_NO_ERROR)
            return lxw_strerror(error);
        return ringfill::cli::put_own_names(file) ? nullptr : "the workbook cannot be put together";
    } catch (const std::exception&) {
        return "there is no room in memory";
    }
}
