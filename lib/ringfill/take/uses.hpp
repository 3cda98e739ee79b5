#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <ringfill/units/quantity.hpp>

namespace ringfill {

/// One ring laid on scrap with each procedure, to see that it welds as planned.
struct TrialRing {
    std::string procedure;
    std::string bore; ///< the largest of that procedure
    Mass wire;
};

/// What all bores of a job use of one wire: one filler in one diameter.
struct WireUse {
    std::string filler; ///< family/name
    Length diameter;
    LinearMass linear_mass;
    Mass laid;                   ///< all bores, counts applied
    Mass wire;                   ///< laid over efficiency, and trims
    std::vector<double> counts;  ///< of the bores that use it
    std::vector<Mass> wire_each; ///< for one of each
    Time arc;
    std::int64_t starts = 0;
    std::vector<Mass> spools; ///< what the feeder takes; empty: every spool of the table
    std::vector<TrialRing> trials;
    std::optional<double> price_kg;
};

/// What all bores of a job use of one electrode or rod: one filler in one diameter.
struct PieceUse {
    std::string filler; ///< family/name
    bool rods = false;  ///< or else electrodes
    Length diameter;
    Length length;
    Length stub;
    Mass each;                       ///< of one, with its covering
    Mass usable;                     ///< of weld metal from one
    Mass laid;                       ///< all bores, counts applied
    std::vector<double> counts;      ///< of the bores that use it
    std::vector<double> pieces_each; ///< for one of each
    std::vector<TrialRing> trials;   ///< their wire: whole pieces
    std::optional<double> price_kg;
};

/// What all bores use of one shielding gas.
struct GasUse {
    std::string gas;
    std::string holds;               ///< the kind of cylinder
    std::vector<double> counts;      ///< of the bores that use it
    std::vector<Volume> volume_each; ///< for one of each
    Volume volume;                   ///< at 15 degC and 1 atm, purging and leaks included
    VolumeFlow flow;                 ///< the fastest of its procedures
    Time arc;
    std::int64_t starts = 0;
};

} // namespace ringfill
