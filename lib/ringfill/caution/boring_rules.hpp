#pragma once

#include <optional>
#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/caution/caution.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Cautions of the boring of a bore: the bar's lowest speed is too fast, valleys of the weld stand past the
/// finish, little weld is left under a groove.
std::vector<Caution> boring_cautions(const WornBore& bore, const Build& build, const BoringPlan& boring,
                                     UnitSystem units);

/// How a bore grows while it is hot.
struct HotBore {
    std::string name;
    const BoringPlan* boring;
};

/// The caution of the whole job not to finish or measure while hot, with the bore that grows most; nothing
/// without bores.
std::optional<Caution> hot_finish_caution(const std::vector<HotBore>& bores, const Cutting& cutting,
                                          UnitSystem units);

} // namespace ringfill
