#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// What something is sold in, by its content.
template <class Content, class Flow>
struct Pack {
    std::string name;
    std::string note;                      ///< to the reader of the table
    UnitSystem units = UnitSystem::metric; ///< where it is sold
    std::string holds;                     ///< empty for wire
    Sourced<Content> content;              ///< of a gas at 15 degC and 1 atm, real gas
    Sourced<double> usable_share;          ///< of a cylinder, that may be drawn
    std::optional<Sourced<Flow>> draw;     ///< steady flow that one cylinder gives
    bool stocked = true;

    Content usable() const { return content.value * usable_share.value; }
};

/// A spool of wire.
using WirePack = Pack<Mass, MassFlow>;
/// A packet of electrodes or a tube of rods; it holds "electrodes" or "rods".
using PiecePack = Pack<Mass, MassFlow>;
/// A cylinder of fuel for a torch, propane or acetylene, as it is filled. Its draw, if any, neither frosts it
/// nor takes its solvent along; without one propane gives what its size does in the cold, acetylene a seventh
/// of its content an hour.
using FuelPack = Pack<Mass, MassFlow>;
/// A cylinder of shielding gas, or of oxygen for a flame, as it is filled: argon, argon_mixture,
/// argon_helium, carbon_dioxide or oxygen. Its draw, if any, does not freeze its regulator.
using GasPack = Pack<Volume, VolumeFlow>;

struct Packs {
    std::vector<WirePack> wire;
    std::vector<PiecePack> pieces;
    std::vector<GasPack> gas;
    std::vector<FuelPack> fuel;
};

/// Reads packs.json, file after file; a later file corrects or adds entry by entry. Throws Faulty
/// (Origin::table).
Packs read_packs(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
