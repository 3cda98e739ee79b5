#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Where the work is done and what stands near it.
struct Site {
    std::optional<Temperature> ambient;
    std::optional<bool> wet;
    std::optional<bool> indoors;
    std::optional<bool> enclosed;
    std::optional<Volume> room_volume;
    std::optional<Length> ceiling;
    std::vector<std::string> near;
    std::optional<std::string> coating;
    std::vector<std::string> residue;
    std::optional<std::string> fire_rules;
};

} // namespace ringfill
