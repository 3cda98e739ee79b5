#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A worn boss face to be built up: a ring-shaped pad between two diameters.
struct Face {
    Length inner;
    Length outer;
    Length build; ///< how far the finished face stands over the worn one
};

} // namespace ringfill
