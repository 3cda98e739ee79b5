#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/material/abi.h>

#include "say.hpp"

namespace ringfill::steel {

/// What is stated of a metal, percent by mass by element symbol.
struct Composition {
    std::map<std::string, double, std::less<>> stated;

    bool states(std::string_view element) const { return stated.contains(element); }
    /// Percent by mass; an element that is not stated counts 0.
    double pct(std::string_view element) const;
};

/// Reads the numbers prefix + element + "_pct" of a question, such as base_C_pct; the prefix is "base_" or
/// "deposit_". Throws Refusal for one that is no percentage.
Composition read_composition(const rf_question& question, std::string_view prefix);

/// Why a base metal is no ferritic steel at all, or nothing: with more than 10 % of Cr, Ni or Mn, or 2 % of
/// C, it is stainless, austenitic manganese steel or cast iron, and no carbon equivalent says anything of it
/// (common practice, no source).
std::string why_no_ferritic_steel(const Composition& base);

/// Why no carbon equivalent can be formed of a base metal, or nothing: C and Mn must be stated, and it must
/// be a ferritic steel.
std::string why_not_usable(const Composition& base);

/// Whether a deposit takes up hydrogen as ferritic weld metal does: at most 10 % each of Ni and Mn, 16 % of
/// Cr, under 1.2 % of C, and 5 % of Al, Cu and Sn (common practice, no source). Metal of a manganese
/// electrode, of an iron rod or of bronze has no carbon equivalent.
bool ferritic(const Composition& deposit);

/// From how much to how much of an element a rule was made for [%], the limits included.
struct Range {
    std::string_view element;
    double least = 0;
    double most = 100;
};

/// "C 0.50 % is over the 0.32 % it was made for", one for each element outside its range.
std::vector<std::string> outside(const Composition& metal, std::span<const Range> ranges);

/// "Cr, Mo and V of the base metal are not stated and count as 0", or nothing when all are stated.
/// @param whose the base metal, or the deposit.
std::string not_stated(const Composition& metal, std::string_view whose,
                       std::span<const std::string_view> elements);

/// The elements as inputs of a formula, in percent.
std::vector<Input> inputs_of(const Composition& metal, std::span<const std::string_view> elements);

/// A percentage for people, two to four decimals: 0.50, 0.005, 0.4353.
std::string show_pct(double percent);

} // namespace ringfill::steel
