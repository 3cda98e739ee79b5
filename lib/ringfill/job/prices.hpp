#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/units/decimal.hpp>
#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Prices by a name, exact as written.
using NamedPrices = std::vector<std::pair<std::string, Decimal>>;

/// One trip to the machine and back.
struct Travel {
    std::optional<Decimal> distance;
    bool in_miles = false; ///< or else in kilometres
    std::optional<Time> time;
    std::optional<int> trips; ///< nothing: one a day that is worked, and one for the crack test
};

/// A share put on top, in thousandths of a percent, exact.
using ExactShare = std::int64_t;
inline constexpr ExactShare whole_share = 100'000;

/// What things cost, in one currency, and what is put on top.
struct Prices {
    std::optional<std::string> currency; ///< code of ISO 4217
    std::optional<Decimal> labour_hour;
    NamedPrices labour;                ///< an hour of one phase, by its name, instead of labour_hour
    std::optional<Decimal> watch_hour; ///< of the person who watches for fire
    NamedPrices wire_kg;               ///< by filler
    NamedPrices packs;                 ///< of one pack or piece, by words of its name
    bool by_use = false;               ///< the materials used count instead of the whole packs
    std::optional<Decimal> power_kwh;
    std::optional<Decimal> fuel_litre; ///< of a generator, instead of power_kwh
    std::optional<Travel> travel;
    std::optional<Decimal> drive; ///< a kilometre or mile, as the distance is told
    NamedPrices extras;           ///< whole amounts, by what they are for
    std::optional<ExactShare> contingency;
    std::optional<ExactShare> markup;
    std::optional<ExactShare> tax;
};

} // namespace ringfill
