#pragma once

#include <string>

#include <ringfill/working/working.hpp>

namespace ringfill {

/// "45 mm": a figure of a working in its unit.
std::string value_text(const Working& work);

/// "r_f = 45 mm, o = 3 mm": what goes into a figure; a long list by its ends.
std::string inputs_of(const Working& work);

} // namespace ringfill
