#pragma once

#include <string>
#include <vector>

#include <ringfill/document/write.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

// The blocks that the result is put together from, each in a source of its own.

/// A bore: its survey, metal, heat, time and boring.
Value::Object bore_object(const BorePlan& bore);

// Of a bore, parts that are rows of a table too. @param heat_input as laid, where it is known.
Value::Object layer_object(const Layer& layer, std::size_t i);
Value::Object face_object(const FacePad& face, const std::optional<EnergyPerLength>& heat_input);
Value::Object groove_object(const GrooveFill& groove, const std::optional<EnergyPerLength>& heat_input);
Value::Object cut_object(const Cut& cut, const BoringPlan& boring);
Value::Object facing_object(const Facing& face);
Value::Object standing_object(const Standing& step);

/// A line of what to take.
Value::Object need_object(const Need& need, UnitSystem units);

/// The "heat" of a bore, with the figures of its heat balance.
Value::Object heat_object(const BorePlan& bore);

/// The "time" of a bore that has a heat balance: each part the longest that may be, in steps and as a curve.
/// Parts that a run which breaks off does not reach are absent.
Value::Object time_object(const HeatBalance& balance, Time arc);

/// The "boring" of a bore.
Value::Object boring_object(const BorePlan& bore);

/// The quote. Amounts are whole numbers of the smallest unit (…_minor), each with its text; prices are exact
/// decimals and so stand as texts. What is missing is said and has no amount.
Value::Object quote_object(const Quote& quote);
Value::Object line_object(const QuoteLine& line, int exponent);

/// What goes into a formula, by symbol: value and unit.
Value::Object inputs_object(const std::vector<Input>& inputs);

/// Workings as a list, each with figure, formula, inputs by symbol with value and unit, value, unit, source.
Value::List working_list(const std::vector<Working>& workings);

/// The same list put behind a text, without blanks.
void put_working_list(JsonText& line, const std::vector<Working>& workings);

} // namespace ringfill
