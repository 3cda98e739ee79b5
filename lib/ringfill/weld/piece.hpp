#pragma once

#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/working/working.hpp>

namespace ringfill {

/// One electrode or rod as it is used up (section 6 of the computation).
struct PieceLaid {
    FillerForm form = FillerForm::stick;
    Length length;
    Length stub;             ///< thrown away
    Mass mass;               ///< of the whole, with its covering
    Mass usable = {};        ///< of weld metal from one
    bool of_covered = false; ///< the efficiency is of core and covering
    std::string stub_source;
    Working rate; ///< how the metal laid in an hour was reached [kg/h]
};

/// Weld metal that one electrode or rod gives [kg]. With the efficiency of the core [ISO 2401]: core mass of
/// what is melted times the efficiency; with that of the covered electrode: its mass, of what is melted,
/// times the efficiency [correspondence course on filler metal, lesson IX]. The stub is not melted.
/// @param efficiency over 0.
Mass usable_mass(const PieceLaid& piece, LinearMass core, double efficiency);

/// More electrodes or rods than this for one bore are refused: metres of bore, or a core far too thin for it.
inline constexpr int most_pieces = 1'000'000;

/// How many are used up for a mass of weld metal, rounded up; 0 for none. More than `most_pieces` come back
/// as `most_pieces` + 1.
int pieces_for(Mass laid, const PieceLaid& piece);

/// Metal laid by an electrode at a current, from its rate by current or its table, or by a rod at the low end
/// of its range; what the job says goes before. Nothing after noting a fault: no current, or one outside the
/// table.
std::optional<Working> piece_rate(const Procedure& procedure, const Filler& filler, const WireSize& size,
                                  std::vector<Fault>& faults);

/// What of a procedure does not go with an electrode or rod: wire feed, stick-out, spools, transfer, a helix;
/// gas with an electrode. With wire: a deposition rate.
std::vector<Fault> form_faults(const Procedure& procedure, const Filler& filler);

} // namespace ringfill
