#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include <ringfill/document/field.hpp>

namespace ringfill {

/// Why a text is not a measure, as the end of a sentence, and what to write.
struct NotMeasured {
    std::string reason;
    std::string remedy;
    std::optional<double> bare_length = {}; ///< the number, if a length lacks nothing but its unit
};

/// Reads a quantity as people write it: a number and a unit of the kind.
/// Numbers: decimals (12, 0.5, .5, 1.2e3), fractions (9/16), mixed fractions (3-9/16, 3 9/16, 3½), with any
/// Unicode minus, dash, fraction slash or narrow blank that pasting brings. Compound forms of falling units:
/// 1 ft 6-1/2 in, 1 h 30 min. Refused: no unit, a unit of another kind, a decimal comma, digit groups, a
/// fraction over 0, trailing text, more than 200 bytes.
/// @return the value in the SI unit of the kind (a temperature in kelvin, a share as a ratio, turning in
/// rev/s).
std::variant<double, NotMeasured> measure(std::string_view text, Kind kind);

} // namespace ringfill
