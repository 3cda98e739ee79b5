#pragma once

#include <ringfill/document/entry.hpp>
#include <ringfill/job/worn_bore.hpp>

namespace ringfill {

/// One bore, without the names it refers to being looked up.
WornBore read_bore(const Entry& entry);

} // namespace ringfill
