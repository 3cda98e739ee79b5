#pragma once

#include <string>
#include <vector>

#include <ringfill/boring/cuts.hpp>
#include <ringfill/take/need.hpp>

namespace ringfill {

/// The cutting edges of one bore of the job.
struct InsertUse {
    std::string bore;
    int count;  ///< of bores alike
    Edges each; ///< of one of them
};

/// Cutting edges of the boring bar, rough and finish, bore by bore, and one spare of each: the first cut over
/// rough weld may break one [common practice, no source].
/// @param source of the life of an edge.
std::vector<Need> take_inserts(const std::vector<InsertUse>& uses, const std::string& source);

} // namespace ringfill
