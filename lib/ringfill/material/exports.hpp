#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// The names a shared library exports, in alphabetical order, as its file says; it is not loaded. The file
/// has passed check_image. Throws Faulty (Origin::table) when its table of symbols cannot be read.
std::vector<std::string> exported_names(const std::string& path);

} // namespace ringfill
