#pragma once

#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>

namespace ringfill {

/// The price of an hour of something: its own, or the one of any hour.
PriceAt hour_price(const Prices& prices, const std::string& field);

/// Hours by phase, of the crack test on a second visit, and of the fire watch. Without a day the hours are
/// missing, and said to be.
std::vector<QuoteLine> quote_labour(const QuoteFacts& facts, std::vector<Fault>& faults);

} // namespace ringfill
