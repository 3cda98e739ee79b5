#pragma once

#include <string>
#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What is out of the usual in the boring of a bore: speeds, feeds or sizes that portable bars do not have, a
/// first cut that stays in the skin, more than one set-up, limits closer than the bit can be set.
std::vector<std::string> boring_notes(const WornBore& bore, const BoringPlan& boring, const Cutting& cutting,
                                      UnitSystem units);

} // namespace ringfill
