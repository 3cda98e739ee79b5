#pragma once

#include <string_view>

namespace ringfill {

/// The last line of every print.
std::string_view closing();

} // namespace ringfill
