#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// Symbols of the elements that certificates of steel and its fillers print, as they are written: "C", "Mn".
const std::vector<std::string>& element_symbols();

} // namespace ringfill
