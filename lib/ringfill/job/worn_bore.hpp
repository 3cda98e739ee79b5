#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/job/face.hpp>
#include <ringfill/job/groove.hpp>
#include <ringfill/job/hole.hpp>
#include <ringfill/job/worn.hpp>

namespace ringfill {

/// One bore, or several alike, as measured and as it shall be.
struct WornBore {
    std::string name;
    std::string path; ///< in the job file, such as bores[1]
    int count = 1;
    std::optional<std::string> line;
    std::string axis;                                        ///< horizontal or vertical
    std::string base;                                        ///< family/grade
    std::vector<std::pair<std::string, double>> composition; ///< percent by mass
    std::optional<bool> magnetic;                            ///< whether a magnet holds on the boss
    Length finish_diameter;
    std::optional<std::string> size_class;
    std::optional<std::pair<Length, Length>>
        size_limits; ///< instead of a class: smallest and largest diameter
    Length length;
    std::optional<Length> boss_diameter;
    std::vector<Length> attached; ///< plates on the boss, thickness
    std::optional<Conductance> carry_off;
    std::optional<Length> heat_wall;
    Worn worn;
    std::optional<Length> skim; ///< per side; nothing: welded on the surface as it is
    Length stock;               ///< per side
    Length overhang;            ///< past each face
    std::string procedure;
    std::vector<Face> faces;
    std::vector<Groove> grooves;
    std::vector<Hole> holes;
};

} // namespace ringfill
