#pragma once

#include <string>

#include <ringfill/report/csv/quote_cells.hpp>

namespace ringfill::cli {

/// The bytes of a workbook (Office Open XML, .xlsx) with one sheet. Throws Faulty (Origin::file) when there
/// is no room for it in the system's temporary folder.
std::string workbook(const QuoteCells& cells);

} // namespace ringfill::cli
