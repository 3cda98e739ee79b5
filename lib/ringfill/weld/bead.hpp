#pragma once

#include <ringfill/job/procedure.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/weld/deposition.hpp>

namespace ringfill {

/// The parabolic bead a procedure lays (section 4 of the computation). Scaled by κ, the travel is 1/κ² of the
/// section's: the same metal a second on a longer or shorter way.
struct Bead {
    double scale = 1; ///< κ
    Area section;     ///< A = κ² A₀
    Length width;     ///< w = κ w₀
    Length crown;     ///< c = κ c₀
    Length pitch;     ///< p = κ p₀
    Length valley;    ///< δ = c φ², the most a valley can lie below the crowns
    Speed travel;     ///< v = v₀ / κ²

    /// Height of a flat layer, A/p [m]; it scales with κ.
    Length layer_height() const { return section / pitch; }
};

/// The pitch that a procedure takes unless it says otherwise: two thirds of the width, which makes a flat top
/// of parabolic beads [Suryakumar].
inline constexpr double usual_pitch_ratio = 2.0 / 3.0;

/// Outside this range of pitch over width a layer is lumpy or wasteful; 0.738 is the tangent-overlap limit
/// [Ding, Pan, Cuiuri, Li: Robotics and Computer-Integrated Manufacturing 31, 2015; from memory], 0.55 common
/// practice.
inline constexpr double lowest_usual_pitch_ratio = 0.55;
inline constexpr double highest_usual_pitch_ratio = 0.738;

/// The bead at κ = 1: A₀ = ṁ/(ρ v₀), w₀ = √(1.5 α A₀), c₀ = w₀/α, p₀ = φ w₀.
/// @param bead_ratio α, width over crown, over 0. @param pitch_ratio φ, pitch over width, over 0.
Bead bead(const Deposition& laid, Speed travel, double bead_ratio, double pitch_ratio);

/// The same bead scaled by κ, over 0.
Bead scaled(const Bead& bead, double scale);

/// How far a closed ring runs over its own start, 10° [common practice, no source].
inline constexpr double closing_overlap_deg = 10;
inline constexpr double closing_overlap = closing_overlap_deg / 360; // of a turn

/// Rings a layer over a welded length at a pitch, ⌈L_w/p − 1e-9⌉.
int rings_a_layer(Length welded_length, Length pitch);

/// Way of one closed ring at a radius, 2πr (1 + ω/360) [m].
Length ring_path(Length radius);

/// Way of one layer [m]: N closed rings, or a helix of N turns and one closing ring at the far end,
/// N √((2πr)² + p²) + 2πr.
Length layer_path(TorchPath kind, int rings, Length radius, Length pitch);

/// Torch speed that gives a travel speed at a radius, v/(2πr) [rev/s].
Turning torch_speed(Speed travel, Length radius);

/// What is laid along some way, with its metal and time.
struct Pass {
    Length path;
    Mass laid;
    Time arc;
};

/// A bead laid along a way: m = ρ A × path, t_arc = path/v.
Pass pass_along(Length path, const Bead& bead, const Deposition& deposition);

} // namespace ringfill
