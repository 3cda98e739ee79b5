#pragma once

#include <string>
#include <string_view>

#include <support/guarded.hpp>
#include <support/named_numbers.hpp>
#include <support/sink.hpp>

namespace ringfill::steel {

using family::Figure;
using family::Input;
using family::Refusal;
using family::view_of;

inline constexpr double ice_point_K = 273.15;

/// Adds a part to a note, after a semicolon; an empty part adds nothing.
void add_note(std::string& note, std::string_view part);

/// A method that has no answer here, and why.
Figure not_usable(std::string name, std::string source, std::string why);

/// The hottest preheat that is one [°C]; hotter, the steel goes soft and austenitic under the torch. Common
/// practice, no source.
inline constexpr double hottest_preheat_degC = 700;

/// Puts a method's minimum in [°C]. One over `hottest_preheat_degC` becomes a preheat without a figure, since
/// no torch can follow it, and the note says what it was.
void set_minimum(Figure& method, double minimum_degC);

} // namespace ringfill::steel
