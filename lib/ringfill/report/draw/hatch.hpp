#pragma once

#include <string>
#include <vector>

#include <ringfill/report/draw/svg.hpp>

namespace ringfill {

/// Hatching of cut metal as an explicit path, so that it looks alike on screen and in print.
struct Hatching {
    double spacing; ///< between two lines [mm of paper]
    double degrees; ///< of the lines, counter-clockwise from the horizontal
};

inline constexpr Hatching weld_hatching{0.9, 45};  ///< close, rising to the right
inline constexpr Hatching boss_hatching{2.4, 135}; ///< wide, falling to the right

/// The hatching of weld that is crossed by layer boundaries so far apart [mm of paper]: wider where they lie
/// close, so that both are seen.
constexpr Hatching weld_hatching_between(double spacing) {
    return spacing < 1 ? Hatching{1.8, 45} : weld_hatching;
}

/// The commands of lines through everything that an odd number of the outlines encloses: an outline within
/// another is a hole in it. Lines of neighbouring shapes meet.
std::string hatch(const std::vector<std::vector<PaperPoint>>& outlines, const Hatching& hatching);

} // namespace ringfill
