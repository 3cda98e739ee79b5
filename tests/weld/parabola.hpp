#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill::testing {

/// Section of a parabolic bead, ⅔ w c [m²].
inline Area parabola_section(Length width, Length crown) {
    return 2.0 / 3.0 * width * crown;
}

} // namespace ringfill::testing
