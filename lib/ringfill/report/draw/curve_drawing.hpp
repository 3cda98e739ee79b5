#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// Temperature of the boss over the time: the curve, both limits of a ring, what holds and cooling come to,
/// and below it, by the same hours, when it is warmed up, welded, stopped, reheated, held and left to cool.
/// Where the balance has two runs, what stands for the one with a plate is dashed or thin, with a key. Empty
/// without a heat balance, or when none of its runs comes to any time. One <svg> element for use inside HTML,
/// in mm of paper.
/// @param id unique in the page; ids inside derive from it.
std::string curve_drawing(const BorePlan& plan, UnitSystem units, const std::string& id);

} // namespace ringfill
