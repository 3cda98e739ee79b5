#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// Readings round the bore at one depth from the near face, at equal clock steps from 12 o'clock, in one of
/// two forms: radii from the target axis over the whole turn, or two-point diameters over half a turn.
struct WornStation {
    Length depth;
    std::vector<Length> radii = {};
    std::vector<Length> diameters = {};
};

/// The worn surface in the way the job gives it: one diameter for a round bore worn to one side, or stations,
/// all in the same form. Radii have no offset.
struct Worn {
    std::optional<Length> diameter = {};
    std::optional<Length> offset = {};      ///< of the worn centre from the target axis; nothing: 0
    std::optional<Angle> offset_clock = {}; ///< where the wear is deepest, clockwise from 12 o'clock
    std::vector<WornStation> stations = {};
};

/// A worn boss face to be built up: a ring-shaped pad between two diameters.
struct Face {
    Length inner;
    Length outer;
    Length build; ///< how far the finished face stands over the worn one
};

/// A ring groove in the bore, worn or to be filled.
struct Groove {
    Length diameter;
    Length width;
};

/// A hole that opens into the bore (grease, pin lock) and is plugged before welding.
struct Hole {
    Length diameter;
    Length depth; ///< of its centre from the near face
    Angle clock;
    std::optional<std::string> other_end; ///< open, fitting or blind
};

/// A plate on the boss, which carries heat off and gives it back.
struct Plate {
    Length thickness;
    std::optional<Length> depth = {}; ///< of its middle from the near face; nothing: at mid length
    std::optional<Length> reach = {}; ///< past the boss
    bool wrapped = false;             ///< the blanket lies on it too
};

/// One bore, or several alike, as measured and as it shall be.
struct WornBore {
    std::string name;
    std::string path; ///< in the job file, such as bores[1]
    int count = 1;
    std::optional<std::string> line;
    std::string axis;                                        ///< horizontal or vertical
    std::string base;                                        ///< family/grade
    std::vector<std::pair<std::string, double>> composition; ///< percent by mass
    std::optional<double> carbon_equivalent_pct;             ///< CEV as the certificate prints it
    std::optional<int> bought_after;                         ///< bought in this year or later
    std::optional<Length> product_thickness;                 ///< of what the part was cut from
    std::optional<Mass> part_mass;                           ///< of the whole casting, for heating
    std::optional<bool> magnetic;                            ///< whether a magnet holds on the boss
    Length finish_diameter;
    std::optional<std::string> size_class;
    std::optional<std::pair<Length, Length>> size_limits; ///< instead of a class: smallest and largest
    Length length;
    std::optional<Length> boss_diameter;
    std::vector<Plate> attached;
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
