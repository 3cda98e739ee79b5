#pragma once

#include <ringfill/document/entry.hpp>
#include <ringfill/job/worn_bore.hpp>

namespace ringfill {

/// Refuses what cannot be: a face that begins inside the bore, more than two faces, a groove whose floor lies
/// outside the boss, grooves longer than the bore together, a hole wider than the bore, through a face or in
/// another. Each names both figures. What was not read is not judged.
void check_possible(const WornBore& bore, const Entry& entry);

} // namespace ringfill
