#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Cross-section of a bore to scale, seen from the near face, as it is welded and before it is bored: worn
/// outline, skim, layers, finish, boss, holes, clock positions; below it the wall at the deepest wear,
/// enlarged. One <svg> element for use inside HTML, in mm of paper, `data-mm-per-unit` its scale; each
/// <circle> with a `data-figure` carries that figure of the plan.
/// @param id unique in the page; ids inside derive from it.
std::string cross_section(const WornBore& bore, const BorePlan& plan, UnitSystem units,
                          const std::string& id);

} // namespace ringfill
