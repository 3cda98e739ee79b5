#pragma once

#include <ringfill/report/csv/quote_cells.hpp>

// The part of the program that writes workbooks: an object of its own, ringfill_workbook.part, so that its
// libraries are loaded only for a workbook. The program and the part are built and installed together.
extern "C" {

/// Writes a workbook (Office Open XML, .xlsx) with one sheet. @param file opened for writing, empty.
/// @param folder for what is written on the way, which has no name there.
/// @param version of the program; a part of another version writes nothing.
/// @return what is wrong, valid for as long as the part is loaded, or null.
const char* ringfill_write_workbook(const ringfill::QuoteCells& cells, const char* file, const char* folder,
                                    const char* version) noexcept;
}
