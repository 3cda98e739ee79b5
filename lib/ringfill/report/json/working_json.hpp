#pragma once

#include <vector>

#include <ringfill/document/text_end.hpp>
#include <ringfill/document/value.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// What goes into a formula, by symbol: value and unit.
Value inputs_object(const std::vector<Input>& inputs);

/// Workings as a list for the result, each with figure, formula, inputs by symbol with value and unit, value,
/// unit, source.
Value working_list(const std::vector<Working>& workings);

/// The same list put behind a text, without blanks.
void put_working_list(TextEnd& out, const std::vector<Working>& workings);

} // namespace ringfill
