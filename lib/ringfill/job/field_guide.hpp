#pragma once

#include <string>

namespace ringfill {

/// Every field of the job file with its kind, range, default and meaning, made from the description of the
/// format.
std::string field_guide();

} // namespace ringfill
