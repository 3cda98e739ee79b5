#pragma once

#include <ringfill/heat/bore_heat.hpp>
#include <ringfill/say/sentence.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The sentences on the heat of one bore: the figure and who asks for it, lower ones, those that are not
/// usable and why, where to measure and with what, the heat put in, what follows after the weld.
Sentences heat_sentences(const BoreHeat& heat, UnitSystem units);

} // namespace ringfill
