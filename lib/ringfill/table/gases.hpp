#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A shielding gas by its EN ISO 14175 designation.
struct Gas {
    std::string name;
    std::string words;
    std::string holds; ///< what its cylinders hold: argon, argon_mixture, argon_helium or carbon_dioxide
    std::string composition_source;    ///< key of the bibliography
    Sourced<double> flow_L_min_per_mm; ///< usual flow for solid wire, per millimetre of its diameter
    bool sprays = true;                ///< whether any wire sprays in it
    /// How many times the printed current it takes to spray in it; nothing: once.
    std::optional<SourcedRange<double>> spray_times;
    std::string spray_note; ///< what else to know of spray in it; may be empty
};

/// Reads gases.json, file after file; a later file corrects or adds entry by entry. Throws Faulty
/// (Origin::table).
std::vector<Gas> read_gases(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
