#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>

namespace ringfill {

/// How often somebody drives there and back: as the job says, or once for each day worked and once for the
/// crack test. Nothing: neither is known.
std::optional<int> trips_of(const QuoteFacts& facts);

/// The way and the time on the road of all trips. Where the job gives no prices.travel, that is missing, and
/// so is the one of way and time that has a price of its own but is not given; a job at home says 0 km, which
/// needs no price.
std::vector<QuoteLine> quote_travel(const QuoteFacts& facts, std::vector<Fault>& faults);

/// What of the journey is in no line, though nothing asks for it.
std::vector<std::string> travel_notes(const Prices& prices);

} // namespace ringfill
