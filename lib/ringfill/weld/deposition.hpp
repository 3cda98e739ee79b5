#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/job/procedure.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/table/gases.hpp>
#include <ringfill/weld/piece.hpp>
#include <ringfill/weld/wire.hpp>

namespace ringfill {

/// How fast a procedure lays metal (sections 4 and 6 of the computation).
struct Deposition {
    LinearMass linear_mass = {};    ///< μ, of the wire, of an electrode's core or of a rod
    double efficiency = 0;          ///< η, deposited share of it
    bool as_transferred = true;     ///< the transfer that the job names is the one there is
    Density density;                ///< ρ, of the deposit
    Speed wire_feed = {};           ///< f; 0 of an electrode or rod
    std::optional<Current> current; ///< I, when given or when the filler's melting curve is known
    bool current_given = false;     ///< by the job, not from the wire feed
    MassFlow rate = {};             ///< ṁ = μ f η
    Sourced<Length> stick_out = {};
    std::optional<PieceLaid> piece = {}; ///< of an electrode or rod; nothing: a wire
};

/// Linear mass of solid wire, (π/4) d² ρ [kg/m].
LinearMass solid_wire_mass(Length diameter, Density density);

/// The deposited share that holds: the job's, else the filler's for the gas, else for the transfer where the
/// job names one that holds, else the filler's.
Sourced<double> efficiency_of(const Procedure& procedure, const Filler& filler, bool transfer_holds = true);

/// Works out the deposition of a procedure with its filler. An electrode or rod is laid as piece_rate() says;
/// of a wire a feed or current that is left out follows from the other by the filler's melting curve or feed
/// table; outside the table, or with neither known, nothing comes back and a fault is noted. A diameter that
/// the filler does not have takes the nearest row, scaled to its section. @param gas may be null: none, or
/// one that is not known.
std::optional<Deposition> deposition(const Procedure& procedure, const Filler& filler,
                                     std::vector<Fault>& faults, const Gas* gas = nullptr);

} // namespace ringfill
