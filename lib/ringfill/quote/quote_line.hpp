#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/quote/money.hpp>
#include <ringfill/table/currencies.hpp>
#include <ringfill/units/decimal.hpp>

namespace ringfill {

/// Thousandths of a unit.
using Thousandths = std::int64_t;

/// What a part of some packs is worked out from.
struct ShareOfPacks {
    std::size_t first = 0; ///< of the lines of the packs
    std::size_t lines = 0;
    std::optional<Minor> cost;           ///< of the packs; nothing: a price is missing
    std::optional<Thousandths> supplied; ///< by them; nothing: not known
};

/// A line of a quote.
struct QuoteLine {
    std::string item;
    std::optional<Thousandths> quantity; ///< nothing: not known
    double measured = 0;                 ///< the quantity before it was rounded to thousandths
    std::string unit;
    std::optional<Decimal> price = {};     ///< of one unit
    std::optional<ShareOfPacks> part = {}; ///< instead of a price
    std::optional<Minor> amount = {};      ///< nothing: something is missing
    std::string missing = {};              ///< what, and where it is written; empty when there is an amount
    std::string price_path = {};           ///< where in the job the price stands, or would
};

/// Rounded to the nearest, halves up.
Thousandths thousandths(double value);

/// A line of so much, still without a price. @param quantity nothing: not known; then `missing` says why, and
/// where it is written.
QuoteLine line_of(std::string item, std::optional<double> quantity, std::string unit,
                  std::string missing = {});

/// Where a price is written in the job, and the price if it is there.
struct PriceAt {
    std::string path;
    std::optional<Decimal> price;
    std::string as_shown = {}; ///< how people read where it is written; empty: by its path
};

/// A line with its price and amount, rounded half to even, once. What the line lacks besides stays in
/// `missing`. Noted: a price with over two decimals more than the currency has, and an amount of more than 15
/// digits.
QuoteLine priced(QuoteLine line, const PriceAt& at, const Currency& currency, std::vector<Fault>& faults);

/// The fault of an amount that is too large to be told exactly.
/// @param what makes it, where the path alone does not say.
Fault too_large(std::string path, std::string what = {});

/// Notes a fault, unless the same is noted already: one price may stand for many lines.
void add_fault(std::vector<Fault>& faults, Fault fault);

} // namespace ringfill
