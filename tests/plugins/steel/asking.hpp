#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/material/abi.h>

#include "steel/say.hpp"

namespace ringfill::testing {

/// The numbers of a question by their names.
using Numbers = std::map<std::string, double>;

/// Percent by mass by element symbol.
using Percent = std::map<std::string, double>;

struct SaidAdvice {
    std::string kind;
    std::string text;
    std::string source;
};

/// All that the rules said to one question.
struct Said {
    rf_status status = -1;
    std::vector<steel::Figure> values;
    std::vector<steel::Figure> methods;
    std::vector<SaidAdvice> advice;
    std::string fault; ///< "where: what"

    const steel::Figure&
    method(std::string_view name) const;                     ///< throws std::runtime_error if it was not said
    const steel::Figure& value(std::string_view name) const; ///< likewise
    bool has_method(std::string_view name) const;
    bool has_value(std::string_view name) const;
    std::string texts(std::string_view kind) const; ///< advice of a kind, each "text [source]" on a line
};

/// Asks the rules through the interface.
Said ask_steel(std::string_view topic, const Numbers& numbers);

/// The numbers with a composition added under a prefix, base_ or deposit_.
Numbers with(Numbers numbers, const std::string& prefix, const Percent& metal);

/// The numbers with one set, or left out.
Numbers with(Numbers numbers, const std::string& name, double value);
Numbers without(Numbers numbers, const std::string& name);

/// A steel with no alloy, every element of the formulas stated, so that no note is made of it.
Percent plain_steel(double carbon, double manganese);

/// A question within the range of every method: C 0.20 Mn 1.20, 25 mm of wall, 1.5 kJ/mm, H5, medium
/// restraint, and a deposit that does not govern.
Numbers usual();

/// The minimum of a method in degC.
double degC(const steel::Figure& method);

inline constexpr const char* method_b_name = "EN 1011-2 method B";
inline constexpr const char* table_c1_name = "EN 1011-2 method A, Table C.1";
inline constexpr const char* annex_name = "AWS D1.1 hydrogen-control annex";
inline constexpr const char* seferian_name = "Séférian";

} // namespace ringfill::testing
