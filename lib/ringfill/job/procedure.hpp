#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// What an approved welding procedure asks for; it rules over every method of this library.
struct Approved {
    struct PostHeat {
        std::optional<Temperature> temperature;
        std::optional<Time> time;
    };

    std::string reference;
    std::optional<Temperature> preheat_min;
    std::optional<Temperature> interpass_max;
    std::optional<std::pair<EnergyPerLength, EnergyPerLength>> heat_input; ///< lowest and highest
    std::optional<PostHeat> post_heat;
    bool confirmed = false; ///< its author confirms what would be stopped
};

/// How the torch goes round: closed rings stepped by a pitch, or one helix a layer.
enum class TorchPath { ring, helix };

/// The settings one or more bores are welded with.
struct Procedure {
    std::string name;
    std::string path;   ///< in the job file, such as procedures.main
    std::string filler; ///< family/name
    Length wire;        ///< diameter of the wire, of an electrode's core or of a rod
    std::vector<Mass> spools;
    std::string gas; ///< empty: not said
    std::optional<Speed> wire_feed;
    std::optional<Current> current;
    std::optional<MassFlow> deposition_rate; ///< metal laid, of an electrode or rod
    std::optional<Voltage> voltage;
    Speed travel;
    std::optional<Speed> travel_max;
    std::string transfer;
    bool transfer_given = false;
    TorchPath torch_path = TorchPath::ring;
    std::optional<double> efficiency;  ///< deposited share of the wire, over 0 to 1
    std::optional<double> bead_ratio;  ///< width over crown
    std::optional<double> dilution;    ///< share of what lies under in a bead, over 0 to 1
    std::optional<double> pitch_ratio; ///< pitch over width, over 0 to 1
    std::optional<VolumeFlow> gas_flow;
    std::optional<Time> step_over; ///< least pause between rings; nothing: the shop's
    Time gas_before;
    Time gas_after;
    std::optional<Length> stick_out;
    std::optional<double> hydrogen_ml_100g;              ///< diffusible, measured [ISO 3690]
    std::vector<std::pair<std::string, double>> deposit; ///< measured all-weld analysis, percent by mass
    std::optional<Approved> approved;
};

} // namespace ringfill
