#pragma once

#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>
#include <ringfill/units/show.hpp>

namespace ringfill {

/// A temperature-indicating stick: its mark melts at its rating [EN ISO 13916, instrument TS].
struct Stick {
    std::string name;
    UnitSystem units = UnitSystem::metric; ///< where it is sold
    Sourced<Temperature> rating;
    bool stocked = true;
};

/// Reads sticks.json, file after file; a later file corrects or adds entry by entry. The sticks are rising in
/// their rating. Throws Faulty (Origin::table), also for a stick without a rating or with two.
std::vector<Stick> read_sticks(const std::vector<Document>& files, const Bibliography& sources);

} // namespace ringfill
