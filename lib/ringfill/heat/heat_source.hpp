#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/table/fuels.hpp>

namespace ringfill {

/// What heats a boss, with what the table of fuels adds to the job.
struct HeatSource {
    std::string kind;
    Power power;                          ///< given off
    double efficiency = 0;                ///< share that reaches the metal
    std::string fuel;                     ///< empty: electric
    bool stays = false;                   ///< on the boss while it is welded
    std::optional<Temperature> skin = {}; ///< the outside gets no hotter; nothing: the interpass maximum
    Time start_delay = {};                ///< from heater off to the first arc
    std::vector<Assumed> assumed = {};

    Power into_metal() const { return efficiency * power; }
};

/// The heater that a job takes when it names none [common practice, no source].
inline constexpr std::string_view usual_heater = "propane";

/// From heater off to the first arc, where the job does not say [common practice, no source].
inline const Time usual_start_delay = in_si<Time>(120);

/// The heater of the job, its gaps filled from the table. Nothing when the table does not have its kind.
std::optional<HeatSource> heat_source(const std::optional<Heater>& heater, const Fuels& fuels);

} // namespace ringfill
