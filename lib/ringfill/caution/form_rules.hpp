#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>

namespace ringfill {

/// What a form of filler asks for: covered electrodes with a limit of hydrogen keep to it only when dry.
std::vector<Caution> form_cautions(const Procedure& procedure, const Filler& filler);

} // namespace ringfill
