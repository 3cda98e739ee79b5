#include "tempered.hpp"

#include <cmath>

#include <fmt/format.h>

namespace ringfill::steel {

bool tempered_low(const Asked& asked) {
    return (asked.softens_degC && *asked.softens_degC < release_degC) ||
           (asked.tempering_degC && *asked.tempering_degC - under_tempering_K < least_release_degC);
}

std::string why_tempered_low(const Asked& asked) {
    if (asked.softens_degC && *asked.softens_degC < release_degC)
        return fmt::format("it is quenched, and heat over {} softens it", show_both(*asked.softens_degC));
    return fmt::format("it was tempered at {}, and heat within {} K of that softens it",
                       show_both(asked.tempering_degC.value()), under_tempering_K);
}

std::string show_both(double degC) {
    return fmt::format("{:.0f} °C ({:.0f} °F)", std::floor(degC), std::floor(settled(degC * 9 / 5 + 32)));
}

std::string show_at_least(double degC) {
    return fmt::format("{:.0f} °C ({:.0f} °F)", std::ceil(degC), std::ceil(settled(degC * 9 / 5 + 32)));
}

} // namespace ringfill::steel
