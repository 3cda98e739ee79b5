#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/workshop.hpp>
#include <ringfill/table/fuels.hpp>

namespace ringfill {

/// What heats a boss, with what the table of fuels adds to the job.
struct HeatSource {
    std::string kind;
    Power power;           ///< given off
    double efficiency = 0; ///< share that reaches the metal
    std::string fuel;      ///< empty: electric
    std::vector<Assumed> assumed;

    Power into_metal() const { return efficiency * power; }
};

/// The heater that a job takes when it names none [common practice, no source].
inline constexpr std::string_view usual_heater = "propane";

/// The heater of the job, its gaps filled from the table. Nothing when the table does not have its kind.
std::optional<HeatSource> heat_source(const std::optional<Heater>& heater, const Fuels& fuels);

} // namespace ringfill
