#pragma once

#include <string>
#include <vector>

#include <ringfill/take/need.hpp>
#include <ringfill/units/quantity.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// The holes of one kind in all bores of one name.
struct HoleUse {
    std::string bore;
    Length diameter;
    int holes = 0;        ///< counts applied
    bool fitting = false; ///< a fitting sits at the other end
};

/// What the holes need: a rod of copper or carbon for each, to keep the weld out, a drill of each diameter to
/// reopen them, a new fitting where there was one; one spare rod and fitting of each diameter [common
/// practice, no source].
std::vector<Need> take_holes(const std::vector<HoleUse>& holes, UnitSystem units);

} // namespace ringfill
