#pragma once

#include <string>

#include <ringfill/report/csv/quote_cells.hpp>

namespace ringfill::cli {

/// The bytes of a workbook (Office Open XML, .xlsx) with one sheet, by the part of the program that is loaded
/// for it alone. Throws Faulty (Origin::file) when that part is missing, or when there is no room for the
/// workbook in the system's temporary folder.
std::string workbook(const QuoteCells& cells);

} // namespace ringfill::cli
