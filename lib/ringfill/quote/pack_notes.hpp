#pragma once

#include <string>
#include <vector>

#include <ringfill/quote/quote_facts.hpp>

namespace ringfill {

/// What the names of prices.packs do that was most likely not meant: name nothing that is taken, name what is
/// priced elsewhere, or price more than one filler, gas or fuel; and the tools that no name prices.
std::vector<std::string> pack_notes(const QuoteFacts& facts);

} // namespace ringfill
