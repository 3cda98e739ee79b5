#pragma once

#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// A plate on the boss, round it as a whole disc.
struct BossPlate {
    Length thickness;
    Length middle; ///< of its thickness, from the near face of the boss
    Length reach;  ///< past the boss
    bool wrapped = false;
};

/// How far past the boss a plate reaches that the job does not tell of, 600 mm √(t/30 mm): beyond it no
/// figure moves [m; section 9 of the computation].
Length usual_reach(Length thickness);

/// A boss as a ring of metal with what stands on it.
struct BossShape {
    Length bore_radius; ///< r_s
    Length outer_radius;
    Length length;
    Length pitch; ///< of the bore's beads
    std::vector<BossPlate> plates = {};
    Conductance carry_off = {}; ///< from the outside into the machine, in place of plates
};

/// What kind of face loses heat.
enum class FaceKind { bore, outside, end, plate, wrapped_plate };

/// A face of a cell to the air.
struct BareFace {
    std::size_t cell;
    double area;       ///< [m²]
    double emissivity; ///< ε_x, lower in the bore, which sees out by its ends only
    FaceKind kind;
};

/// Two neighbours of a plate: area of the face over the distance of their centres [m].
struct PlateLink {
    std::size_t inner;
    std::size_t outer;
    double shape;
};

/// Where the first cell of a plate joins an outer cell of the boss.
struct PlateJoin {
    std::size_t boss_cell;
    std::size_t plate_cell;
    double area;           ///< of the boss that the plate covers there [m²]
    double boss_distance;  ///< from the centre of the boss's cell to its outside [m]
    double plate_distance; ///< from there to the centre of the plate's first cell [m]
};

/// A boss in finite volumes over r and z, its plates as rings of cells (section 9 of the computation): plain
/// numbers in SI. A cell stands at slot(i, k), i from the bore outwards, k from the near face; a row of empty
/// slots before and after lets a loop ask for every neighbour. Cells of plates follow.
struct BossMesh {
    std::size_t across = 0;              ///< n_r
    std::size_t along = 0;               ///< n_z
    std::vector<double> radii = {};      ///< of the faces between cells, n_r + 1
    double cell_length = 0;              ///< along z
    double length = 0;                   ///< L
    std::vector<double> volume = {};     ///< of each slot; 0 of an empty one
    std::vector<double> to_outer = {};   ///< area of the face to the next cell outwards over the distance
    std::vector<double> to_farther = {}; ///< likewise to the next cell along z
    std::vector<BareFace> faces = {};
    std::vector<PlateLink> links = {};
    std::vector<PlateJoin> joins = {};
    double carry_off = 0; ///< of each outer cell [W/K]

    std::size_t slot(std::size_t i, std::size_t k) const { return (k + 1) * across + i; }
    std::size_t first_cell() const { return across; }
    std::size_t past_boss() const { return (along + 1) * across; } ///< the slot after the boss's last cell
    std::size_t first_of_plates() const { return (along + 2) * across; }
    double wall() const { return radii.back() - radii.front(); }
};

/// Lays the mesh: the wall in 4 to 12 cells, those at both surfaces at most 4 mm thick, the length in 8 or
/// more equal ones of about one pitch or whole pitches, fewer where a cell would be under 1 mm; each plate in
/// 14 rings, the first 5 mm wide. Every length over 0, outer radius over bore radius.
BossMesh boss_mesh(const BossShape& shape);

/// Makes the mesh one of so many times the mass: metal and conduction grow likewise, the surface as that of a
/// body of the same shape, the least. For heat that counts as spread over all of it. @param times at least 1.
void stand_for(BossMesh& mesh, double times);

} // namespace ringfill
