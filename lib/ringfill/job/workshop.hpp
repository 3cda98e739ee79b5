#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/cutting_tool.hpp>
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

/// The torch head that goes into the bore.
struct Torch {
    std::optional<Length> smallest_bore;
    std::optional<Length> reach;
};

/// What heats the boss.
struct Heater {
    std::string kind;
    std::optional<Power> power;       ///< given off by the source
    std::optional<double> efficiency; ///< share that reaches the metal
    std::optional<bool> stays;        ///< on the boss while it is welded; nothing: an electric one does
    std::optional<Temperature> skin;  ///< the outside of the boss gets no hotter; nothing: interpass maximum
    std::optional<Time> start_delay;  ///< from heater off to the first arc
};

/// The portable boring bar and how it is run.
struct BoringBar {
    std::vector<Turning> bar_speeds;
    CuttingTool tool = CuttingTool::carbide; ///< what its edges are made of
    std::optional<Speed> cutting_speed;
    std::optional<Length> feed; ///< per revolution
    std::optional<Length> rough_cut;
    std::optional<Time> edge_life;
    std::optional<Length> stroke;
};

} // namespace ringfill
