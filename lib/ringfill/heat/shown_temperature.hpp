#pragma once

#include <optional>
#include <string>

#include <ringfill/units/quantity.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

// A computed temperature is rounded once, where it is decided, and every view, stick and comparison uses that
// number: a minimum up, a maximum down, to 5 °C or 10 °F. What a document prints and what is approved stands
// as it is written.

Temperature rounded_up(Temperature computed, UnitSystem units);
Temperature rounded_down(Temperature computed, UnitSystem units);

/// The formula of a temperature in °C with that rounding on top, as workings write it.
std::string rounded_up_formula(const std::string& formula, UnitSystem units);
std::string rounded_down_formula(const std::string& formula, UnitSystem units);

/// A figure that a document prints in one scale or both, for a reader of one: as printed where it is, else
/// the conversion, which is rounded.
struct PrintedFigure {
    Temperature value;
    bool as_printed = true;
};
PrintedFigure printed_minimum(Temperature exact, std::optional<double> degC, std::optional<double> degF,
                              UnitSystem units);
PrintedFigure printed_maximum(Temperature exact, std::optional<double> degC, std::optional<double> degF,
                              UnitSystem units);

} // namespace ringfill
