#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// Adds to a bore's object how filler and base metal go together: suits, and dilution where it is known.
void put_metals(Value::Object& object, const BorePlan& bore);

} // namespace ringfill
