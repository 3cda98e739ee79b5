#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/quote/quote.hpp>

namespace ringfill {

/// The quote as a block of the result. Amounts are whole numbers of the smallest unit (…_minor), each with
/// its text; prices are exact decimals and so stand as texts. What is missing is said and has no amount.
Value quote_object(const Quote& quote);

} // namespace ringfill
