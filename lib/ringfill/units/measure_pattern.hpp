#pragma once

#include <string>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// What measure() reads as a quantity of a kind, as a regular expression (ECMA 262, ASCII only, anchored),
/// for whoever checks a job without this program. Made from the units and signs that measure() itself knows.
/// It judges the form alone: no range, no value too large. Looser than measure() where a unit of another kind
/// stands right at a digit ("1 m3 mm"), stricter where a digit stands right behind a fraction character.
/// @param may_be_negative whether a minus sign may stand before it; "-0 mm" is refused where it may not.
/// Throws std::logic_error for a kind without units.
std::string measure_pattern(Kind kind, bool may_be_negative);

} // namespace ringfill
