#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <ringfill/working/working.hpp>

namespace ringfill {

/// Packs of one kind to load.
struct PackCount {
    std::string pack;
    std::int64_t count = 0;
};

/// How a line comes into a quote.
enum class Charge {
    used_up,  ///< among the materials
    tool,     ///< comes home again: only where it has a price of its own
    by_hours, ///< with the hours or the energy, not by the piece
};

/// One line of what to take: how much, why, and by which rule.
struct Need {
    std::string item;
    double need = 0;    ///< in the unit, without the reserve
    double reserve = 0; ///< taken on top
    std::string unit;   ///< kg, L or pieces
    std::vector<PackCount> cover;
    bool pack_known = true;     ///< false: no pack of the table holds it, and the next two mean nothing
    double supplied = 0;        ///< what the packs hold that can be used
    double spare = 0;           ///< supplied over need and reserve
    bool for_measuring = false; ///< a temperature stick or thermometer
    std::string why;            ///< with the numbers that made it, in the user's units
    std::string source;         ///< key of the rule's source
    Charge charge = Charge::used_up;
    std::vector<Working> working =
        {}; ///< of need, reserve, supplied and spare; in a whole plan among its own
};

/// Adds the workings of what the packs supply and what is spare.
/// @param counts how many of each pack. @param contents what each holds that can be used, in the line's unit.
void work_supply(Need& line, std::vector<double> counts, std::vector<double> contents);

} // namespace ringfill
