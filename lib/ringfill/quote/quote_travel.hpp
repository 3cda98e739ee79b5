#pragma once

#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>

namespace ringfill {

/// How often somebody drives there and back: as the job says, or once for each day worked and once for the
/// crack test. Nothing: neither is known.
std::optional<int> trips_of(const QuoteFacts& facts);

/// The way and the time on the road of all trips. Where the job gives no prices.travel, that is missing; a
/// job at home says 0 km.
std::vector<QuoteLine> quote_travel(const QuoteFacts& facts, std::vector<Fault>& faults);

} // namespace ringfill
