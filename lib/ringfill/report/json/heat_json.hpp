#pragma once

#include <ringfill/document/value.hpp>
#include <ringfill/heat/bore_heat.hpp>

namespace ringfill {

/// The heat of one bore as the result writes it; what is not known is absent.
Value heat_object(const BoreHeat& heat);

} // namespace ringfill
