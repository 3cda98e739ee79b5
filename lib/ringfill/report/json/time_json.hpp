#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Adds the heat balance's own figures to the "heat" object of a bore.
void put_balance(Value::Object& heat, const HeatBalance& balance);

/// The "time" object of a bore: each part the longest that may be, in steps and as a curve.
/// Parts that a run which breaks off does not reach are absent.
Value time_object(const BorePlan& bore);

} // namespace ringfill
