#pragma once

namespace ringfill::cli {

/// The font of every cell, free and on every system or replaced by one as wide there.
inline constexpr const char* own_font = "Liberation Sans";

/// Writes in a workbook, in place of what the writer of workbooks puts there by itself, the name and version
/// of this program and a theme with its own font. False when the file cannot be read or written so.
bool put_own_names(const char* file);

} // namespace ringfill::cli
