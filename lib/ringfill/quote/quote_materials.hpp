#pragma once

#include <vector>

#include <ringfill/quote/quote_facts.hpp>
#include <ringfill/quote/quote_line.hpp>

namespace ringfill {

/// The materials of a job, told twice.
struct QuotedMaterials {
    std::vector<QuoteLine> packs; ///< whole, as they are bought
    std::vector<QuoteLine> use;   ///< of their cost the share that is used, without the reserve
};

/// What is used up, and each tool that has a price of its own. A pack's price is the one its name has, else
/// that of a kilogram of its filler.
QuotedMaterials quote_materials(const QuoteFacts& facts, std::vector<Fault>& faults);

} // namespace ringfill
