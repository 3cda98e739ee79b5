#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include <ringfill/material/abi.h>

namespace ringfill {

/// A plugin that was loaded, everything but its rule copied. The library itself stays until the program ends.
struct Plugin {
    std::string file; ///< its canonical path
    std::string family;
    std::string version;
    std::string table;                                                 ///< JSON text, not yet read
    rf_status (*answer)(const rf_sink*, const rf_question*) = nullptr; ///< null: the table says it all
};

/// Loads one plugin after asking whether it is a whole library for this machine. Throws Faulty
/// (Origin::table) with one fault that names the file, what is wrong and what to do; Origin::file when it
/// cannot be read. Loading runs what constructors the library has: only files from folders the user trusts
/// may come here.
Plugin load_plugin(const std::string& path);

/// The first byte of a text that is no UTF-8, counted from 1, if there is one.
std::optional<std::size_t> not_utf8_at(std::string_view text);

/// Whether a text is UTF-8 and holds nothing that could disturb a terminal or reorder a line.
bool is_clean(std::string_view text);

} // namespace ringfill
