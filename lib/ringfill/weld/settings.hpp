#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/job/job.hpp>
#include <ringfill/material/shop.hpp>
#include <ringfill/weld/bead.hpp>

namespace ringfill {

/// A procedure with everything that its filler and gas add to it.
struct Settings {
    const Procedure* procedure = nullptr;
    const Filler* filler = nullptr;
    const Gas* gas = nullptr;       ///< null: the filler needs none
    const WireSize* size = nullptr; ///< the filler's row for the wire, or the nearest one
    Window window = {};             ///< of that row, for the transfer where the job names it
    Deposition deposition = {};
    double bead_ratio = 0;
    double pitch_ratio = 0;
    Bead unscaled_bead = {}; ///< the bead at κ = 1
    Speed travel_limit = {}; ///< v_max
    VolumeFlow gas_flow = {};
    std::optional<SourcedRange<double>> efficiency_range = {}; ///< usual of the filler or its process
};

/// A bore of the job with the settings of its procedure and the metal it is made of, each found once.
struct GivenBore {
    const WornBore& bore;
    const Settings& settings;
    const Base& base;
};

/// The share of the heat input that a faster travel may take away at most: a quarter [EN ISO
/// 15614-1:2017+A1:2019, 8.4.7; read in a reproduction].
inline constexpr double least_heat_share = 0.75;

/// The settings of a procedure, or nothing after noting the faults: a filler or gas that is not known, a wire
/// feed that cannot be found.
std::optional<Settings> settings(const Procedure& procedure, const Shop& shop, std::vector<Fault>& faults);

} // namespace ringfill
