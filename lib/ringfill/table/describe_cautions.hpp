#pragma once

#include <ringfill/document/field.hpp>

namespace ringfill {

/// The description of cautions.json.
extern const Record cautions_record;

} // namespace ringfill
