#pragma once

#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>

namespace ringfill {

/// The energy of arc, electric heater and boring bar from the mains, or the fuel of a generator where the job
/// gives the price of that.
std::vector<QuoteLine> quote_power(const QuoteFacts& facts, std::vector<Fault>& faults);

} // namespace ringfill
