#pragma once

#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A currency of ISO 4217.
struct Currency {
    std::string name;      ///< its code: EUR
    Sourced<int> exponent; ///< its smallest unit is 10^-exponent, 0 to 4
};

/// Reads currencies.json, file after file; a later file adds to it or corrects it. Throws Faulty
/// (Origin::table), also for a code that is not three capital letters.
std::vector<Currency> read_currencies(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
