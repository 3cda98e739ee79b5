#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// What heats a boss, and what it does where the job does not say.
struct HeaterKind {
    std::string name;                          ///< the word of the job's heater.kind
    Sourced<double> efficiency;                ///< share of its power that reaches the metal
    std::optional<SourcedRange<double>> range; ///< of the efficiency, low and high
    Sourced<Power> power;                      ///< given off by the source
    std::string fuel;                          ///< name of a fuel; empty: electric
    std::string note;                          ///< to the reader of the table
};

/// A fuel that a torch burns.
struct Fuel {
    std::string name;
    Sourced<double> net_J_kg; ///< net heating value, the water of the flame as vapour
    /// From cylinders, at 15 degC and 1 atm; nothing: burns in air.
    std::optional<Sourced<double>> oxygen_m3_kg;
};

struct Fuels {
    std::vector<HeaterKind> heaters;
    std::vector<Fuel> fuels;
};

/// Reads fuels.json, file after file; a later file corrects or adds entry by entry. Throws Faulty
/// (Origin::table), also for a heater that no job can ask for, one whose fuel is in no file so far, and one
/// whose efficiency lies outside its own range.
Fuels read_fuels(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
