#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Upper half of a section along a bore to scale, at the clock position of the deepest wear, as it is welded
/// and before it is bored: boss, layers and rings with their numbers, overhang, finish, grooves, faces built
/// up, holes turned into the section, dimensions; below it the first rings at the near face, enlarged. One
/// <svg> element for use inside HTML, in mm of paper, `data-mm-per-unit` its scale.
/// @param id unique in the page; ids inside derive from it.
std::string longitudinal_section(const WornBore& bore, const BorePlan& plan, UnitSystem units,
                                 const std::string& id);

} // namespace ringfill
