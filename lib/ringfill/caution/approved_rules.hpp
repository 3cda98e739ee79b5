#pragma once

#include <optional>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What the approved procedure of a procedure asks for, told in every view; nothing where there is none. A
/// minimum over its maximum is called contradictory, and neither is changed. People read a minimum rounded up
/// and a maximum rounded down, to 5 °C or 10 °F.
std::optional<Caution> approved_caution(const Procedure& procedure, UnitSystem units);

} // namespace ringfill
