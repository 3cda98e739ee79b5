#pragma once

#include <ringfill/document/field.hpp>

namespace ringfill {

/// The description of cutting.json.
extern const Record cutting_record;

} // namespace ringfill
