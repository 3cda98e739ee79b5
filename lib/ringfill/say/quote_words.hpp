#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// "TOTAL without tax": what a total may be called.
std::string total_name(const Quote& quote);
/// ", INCOMPLETE: 2 missing", or nothing.
std::string incomplete_text(const Quote& quote);

/// Thousandths of a unit as a number of units.
inline double in_units(Thousandths quantity) {
    return static_cast<double>(quantity) / 1000;
}

/// Thousandths of a unit in the fewest digits: "12.5".
std::string number_text(Thousandths quantity);

/// "12.5 %" of thousandths of a percent.
std::string share_text(ExactShare share);

} // namespace ringfill
