#pragma once

#include <ringfill/document/entry.hpp>
#include <ringfill/job/prices.hpp>

namespace ringfill {

/// The prices of a job, each exact as it was typed: at most 6 decimals, shares at most 3. Faults are noted.
Prices read_prices(const Entry& entry);

} // namespace ringfill
