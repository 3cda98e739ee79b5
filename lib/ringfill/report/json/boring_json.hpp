#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The boring of one bore as the result writes it; what is not known is absent.
Value boring_object(const BorePlan& bore);

} // namespace ringfill
