#pragma once

#include <vector>

#include <ringfill/quote/quote.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// How every figure of a quote was reached, under "quote".
std::vector<Working> quote_working(const Quote& quote);

} // namespace ringfill
