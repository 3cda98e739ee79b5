#pragma once

#include <string>

#include <ringfill/report/draw/drawn_bore.hpp>

namespace ringfill {

/// Cross-section of a bore to scale, seen from the near face, as it is welded and before it is bored: worn
/// outline, skim, layers, finish, boss, holes, clock positions; below it the wall at the deepest wear,
/// enlarged. One <svg> element for use inside HTML, in mm of paper, `data-mm-per-unit` its scale; each
/// <circle> with a `data-figure` carries that figure of the plan.
/// @param id unique in the page; ids inside derive from it.
std::string cross_section(const DrawnBore& drawn, const std::string& id);

/// Upper half of a section along a bore to scale, at the clock position of the deepest wear, as it is welded
/// and before it is bored: boss, layers and rings with their numbers, overhang, finish, grooves, faces built
/// up, holes turned into the section, dimensions; below it the first rings at the near face, enlarged. One
/// <svg> element for use inside HTML, in mm of paper, `data-mm-per-unit` its scale.
/// @param id unique in the page; ids inside derive from it.
std::string longitudinal_section(const DrawnBore& drawn, const std::string& id);

/// Temperature of the boss over the time: the curve, both limits of a ring, what holds and cooling come to,
/// and below it, by the same hours, when it is warmed up, welded, stopped, reheated, held and left to cool.
/// Where the balance has two runs, what stands for the one with a plate is dashed or thin, with a key. Empty
/// without a heat balance, or when none of its runs comes to any time. One <svg> element for use inside HTML,
/// in mm of paper.
/// @param id unique in the page; ids inside derive from it.
std::string curve_drawing(const BorePlan& plan, UnitSystem units, const std::string& id);

} // namespace ringfill
