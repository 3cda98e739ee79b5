#pragma once

#include <optional>

#include <ringfill/heat/preheat.hpp>

namespace ringfill {

/// The most that metals of a kind bear between rings, and how far that gives way to a minimum.
struct GroupMaximum {
    AskedTemperature asked;
    std::optional<Temperature> gives_way_to; ///< nothing: it never does
};

/// Of the grade's own row, unless that is practice, else of its group by the wall; nothing for metal of no
/// group.
std::optional<GroupMaximum> group_maximum(const HeatCase& heat_case);

/// How hot metal that was quenched or tempered may get before it softens, 50 K under its tempering; nothing
/// when that is not known.
std::optional<AskedTemperature> softens_over(const HeatCase& heat_case);

/// Over this an approved figure is a stop: what softens it, or for quenched metal of which nobody knows that,
/// 50 K over the maximum of its group. Nothing for metal that was not hardened.
std::optional<AskedTemperature> softening_stop(const HeatCase& heat_case);

/// The highest temperature to begin a ring at: the lowest of documents that apply, what the tempering allows,
/// the group's, and the filler's own unless it is laid with limits of its own from the second layer on. A
/// group's that is practice gives way to a minimum that comes within 50 K of it. It does not move with
/// hydrogen.
std::optional<AskedTemperature> maximum_between_rings(const HeatCase& heat_case, const Preheat& preheat);

/// What holds from the second layer on under a filler of another kind than the steel: not under 120 °C on a
/// hardenable base, else not under the lesser of that and the minimum, and not over what the filler bears.
std::optional<LaterLayers> later_layers(const HeatCase& heat_case, const Preheat& preheat);

} // namespace ringfill
