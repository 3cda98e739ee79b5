#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/sticks.hpp>
#include <ringfill/take/need.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The temperatures one bore is held between, as far as sticks go.
struct StickUse {
    std::string bore;
    std::optional<Temperature> minimum; ///< nothing: hand-warm is enough, or no figure is known
    std::optional<Temperature> maximum;
};

/// The sticks of one bore: null where no stick of the shop serves. Where one of the two limits has none, or
/// no stick stands apart from the other's, neither is taken: a thermometer reads both.
struct StickPair {
    const Stick* minimum = nullptr; ///< the next rating at or above: molten, the metal is warm enough
    const Stick* maximum = nullptr; ///< the next at or below: not molten, it is not too hot
    bool needs_thermometer = false; ///< a stick is missing, or the first is not rated under the second
};

/// Picks the sticks for one bore from those in the units asked for.
StickPair pick_sticks(const StickUse& use, const std::vector<Stick>& sticks, UnitSystem units);

/// Two of each stick that the bores need [common practice, no source], and one contact thermometer, for the
/// bores that no pair of sticks serves and as a check for the others.
std::vector<Need> take_sticks(const std::vector<StickUse>& uses, const std::vector<Stick>& sticks,
                              UnitSystem units);

} // namespace ringfill
