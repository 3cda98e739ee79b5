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
    std::optional<std::vector<std::string>> near; ///< the heat; nothing: the job does not say
    std::optional<std::string> coating;
    std::optional<std::vector<std::string>> residue;
    std::optional<std::vector<std::string>> crew; ///< who needs care
    std::optional<std::string> fire_rules;        ///< a rule set of the table of cautions, or "longest"
};

} // namespace ringfill
