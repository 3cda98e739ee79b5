#pragma once

#include <vector>

#include <ringfill/document/value.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What goes into a formula, by symbol: value and unit.
Value inputs_object(const std::vector<Input>& inputs);

/// A working for the result: figure, formula, inputs by symbol with value and unit, value, unit, source.
Value working_object(const Working& work);

/// Workings as a list for the result.
Value working_list(const std::vector<Working>& workings);

} // namespace ringfill
