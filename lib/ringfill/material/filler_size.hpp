#pragma once

#include <ringfill/material/filler.hpp>

namespace ringfill {

/// Reads what is known of a filler of one diameter; what its form asks for and does not find, and what does
/// not go with its form, is noted. The name is the diameter in mm.
WireSize read_filler_size(const std::string& name, const Entry& entry, FillerForm form,
                          const Bibliography& sources);

} // namespace ringfill
