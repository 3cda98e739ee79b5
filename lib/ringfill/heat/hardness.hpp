#pragma once

#include <optional>

#include <ringfill/heat/heat_case.hpp>

namespace ringfill {

/// Hardness beside the weld as information, by the composition and the cooling time.
struct Hardness {
    double vickers = 0;
    bool is_martensite = false;             ///< as hard as the steel gets: more heat input lowers it little
    std::optional<Sourced<double>> most_HV; ///< that its group lets it have; nothing: no limit is known
    bool by_certificate = false;            ///< worked out from what the part holds

    bool is_over() const { return most_HV && by_certificate && vickers > most_HV->value; }
};

/// How far the formula is off, either way [HV; own choice, after a scatter of 28 HV as one sigma].
inline constexpr double hardness_spread_HV = 60;

/// Highest hardness beside the weld [HV] for a cooling time from 800 to 500 °C [s]: Yurioka 1987, Metal
/// Construction 19(4) 217R (memory), for 0.006 % N and the steel's own boron. Nothing over 0.8 % C or 5 % of
/// alloy.
std::optional<double> yurioka_HV(const Shares& shares, double t85_s);

/// That of a bore; nothing where the metal is no ferritic steel or its cooling time is not known.
std::optional<Hardness> hardness_beside_weld(const HeatCase& heat_case, std::optional<Time> t85);

} // namespace ringfill
