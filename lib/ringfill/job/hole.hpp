#pragma once

#include <optional>
#include <string>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A hole that opens into the bore (grease, pin lock) and is plugged before welding.
struct Hole {
    Length diameter;
    Length depth; ///< of its centre from the near face
    Angle clock;
    std::optional<std::string> other_end; ///< open, fitting or blind
};

} // namespace ringfill
