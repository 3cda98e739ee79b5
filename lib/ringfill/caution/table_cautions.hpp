#pragma once

#include <vector>

#include <ringfill/caution/fire_watch.hpp>
#include <ringfill/caution/judged.hpp>
#include <ringfill/table/cautions.hpp>

namespace ringfill {

/// The cautions of the table that apply, and those that may because the job does not say, in the order of
/// the table. Any trigger that holds makes one apply; one that does not apply is left out.
std::vector<Caution> table_cautions(const CautionTable& table, const WorkFacts& facts,
                                    const WatchRule& watch);

} // namespace ringfill
