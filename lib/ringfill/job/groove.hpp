#pragma once

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A ring groove in the bore, worn or to be filled.
struct Groove {
    Length diameter;
    Length width;
};

} // namespace ringfill
