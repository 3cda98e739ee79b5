#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// Asks whether a file is a whole shared library for this machine, from its headers alone: loading one that
/// is cut off would end the program. Throws Faulty, one fault: Origin::table with what the file is instead,
/// Origin::file when it cannot be read.
void check_image(const std::string& path);

/// The names a shared library exports, in alphabetical order, as its file says; it is not loaded. The file
/// has passed check_image. Throws Faulty (Origin::table) when its table of symbols cannot be read.
std::vector<std::string> exported_names(const std::string& path);

/// The names it takes from other libraries, likewise.
std::vector<std::string> imported_names(const std::string& path);

} // namespace ringfill
