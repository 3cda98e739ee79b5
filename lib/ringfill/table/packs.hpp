#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// A spool of wire as it is sold.
struct WirePack {
    std::string name;
    std::string note;                      ///< to the reader of the table
    UnitSystem units = UnitSystem::metric; ///< where it is sold
    Sourced<Mass> content;
    bool stocked = true;
};

/// A cylinder of shielding gas, or of oxygen for a flame, as it is filled.
struct GasPack {
    std::string name;
    std::string note; ///< to the reader of the table
    UnitSystem units = UnitSystem::metric;
    std::string holds;            ///< argon, argon_mixture, argon_helium, carbon_dioxide or oxygen
    Sourced<Volume> content;      ///< at 15 degC and 1 atm, real gas
    Sourced<double> usable_share; ///< that may be drawn
    std::optional<Sourced<VolumeFlow>>
        draw; ///< steady flow one cylinder gives without freezing its regulator
    bool stocked = true;

    Volume usable() const { return content.value * usable_share.value; }
};

/// A cylinder of fuel for a torch as it is filled.
struct FuelPack {
    std::string name;
    std::string note; ///< to the reader of the table
    UnitSystem units = UnitSystem::metric;
    std::string holds; ///< propane or acetylene
    Sourced<Mass> content;
    Sourced<double> usable_share; ///< that may be drawn
    Sourced<MassFlow> draw;       ///< steady flow it gives without frosting or losing its solvent
    bool stocked = true;

    Mass usable() const { return content.value * usable_share.value; }
};

/// A packet of electrodes or a tube of rods as it is sold, by its mass.
struct PiecePack {
    std::string name;
    std::string note; ///< to the reader of the table
    UnitSystem units = UnitSystem::metric;
    std::string holds; ///< electrodes or rods
    Sourced<Mass> content;
    bool stocked = true;
};

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
