#pragma once

#include <optional>
#include <string>
#include <utility>

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
};

} // namespace ringfill
