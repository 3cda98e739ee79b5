#pragma once

#include <vector>

#include <ringfill/caution/caution.hpp>
#include <ringfill/job/worn_bore.hpp>
#include <ringfill/units/show.hpp>
#include <ringfill/weld/faces_and_grooves.hpp>

namespace ringfill {

/// Cautions of a bore's faces: a pad that does not lie on the boss, and much built over what was asked.
std::vector<Caution> face_cautions(const WornBore& bore, const std::vector<FacePad>& pads, UnitSystem units);

} // namespace ringfill
