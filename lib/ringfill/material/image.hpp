#pragma once

#include <string>

namespace ringfill {

/// Asks whether a file is a whole shared library for this machine, from its headers alone: loading one that
/// is cut off would end the program. Throws Faulty, one fault: Origin::table with what the file is instead,
/// Origin::file when it cannot be read.
void check_image(const std::string& path);

} // namespace ringfill
