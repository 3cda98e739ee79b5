#pragma once

#include <string>
#include <vector>

#include <ringfill/document/document.hpp>

namespace ringfill {

/// A value that is read as it stands, and whose spelling looks like a slip.
struct TypedOddly {
    std::string path;
    std::string text;
    std::string usual; ///< what is usual instead
};

/// The spellings of a job that look like slips: an inch fraction whose denominator is no power of two up to
/// 64; an approved minimum and maximum in different scales.
std::vector<TypedOddly> typed_oddly(const Document& document);

} // namespace ringfill
