#pragma once

#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// How long the parts of the torch last.
struct WearParts {
    Sourced<Time> tip_life;    ///< arc time of one contact tip
    Sourced<Time> nozzle_life; ///< arc time of one gas nozzle
    Sourced<Mass> liner_life;  ///< wire through one liner
    Sourced<Length> liner_length;
};

/// Reads wear_parts.json, file after file; a later file corrects part by part. Throws Faulty (Origin::table),
/// also when a figure is in none of the files.
WearParts read_wear_parts(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
