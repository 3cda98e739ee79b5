#pragma once

#include <optional>

#include <ringfill/material/abi.h>

#include "composition.hpp"

namespace ringfill::steel {

/// From over this yield strength steel asks for a hold after welding and a long wait [EN 1011-2:2001 C.3;
/// memory].
inline constexpr double high_yield_MPa = 460;

/// What is asked, in the units the rules are printed in. What is not known is absent.
struct Asked {
    Composition base;
    Composition deposit;
    /// The largest index that a composition within the standard and its cap reaches [%]; nothing: that of
    /// `base`.
    std::optional<double> reached_ce;
    std::optional<double> reached_cet;
    std::optional<double> reached_pcm;
    std::optional<double> reached_chemical_carbon;
    std::optional<double> wall_mm;
    std::optional<double> combined_mm;      ///< combined thickness
    std::optional<double> heat_input_kJ_mm; ///< Q, with the efficiency of the process
    std::optional<double> hydrogen_ml_100g; ///< diffusible, an upper limit
    bool hydrogen_is_measured = false;      ///< rather than the limit of a class; never without a figure
    std::optional<double> restraint;        ///< 1 low, 2 medium, 3 high
    std::optional<double> yield_MPa;
};

/// Rounds to nine places, so that a figure that was a round number before it was turned into SI and back
/// falls on the side of a limit that people expect. Moves nothing anyone can measure.
double settled(double value);

/// Reads a question; names it does not know are skipped. Throws Refusal for a value that cannot be: a
/// thickness or strength that is not over 0, heat or hydrogen under 0, a composition that is no percentage.
Asked read_question(const rf_question& question);

} // namespace ringfill::steel
