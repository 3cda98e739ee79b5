#pragma once

#include <map>
#include <string>
#include <vector>

namespace ringfill::testing {

/// The inputs of a formula by their symbols; a number is a list of one.
using Symbols = std::map<std::string, std::vector<double>>;

/// Evaluates a formula text on its own, knowing nothing of the library: + - * / ^, brackets, pi, sqrt, cos,
/// sin, exp, log10, tanh, ceil, floor, min, max, mod, and of a list sum and mean; lists are taken element by
/// element. Throws std::runtime_error for anything else, also for a formula without an operation ("only a
/// word").
double evaluate(const std::string& formula, const Symbols& symbols);

} // namespace ringfill::testing
