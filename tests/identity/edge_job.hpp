#pragma once

#include <string>
#include <vector>

#include "identity/edge_value.hpp"

namespace ringfill::testing {

/// The text of a job at and beyond the edges of what a job may say: a sound one, a sample of the program or
/// any metal with any filler, dressed with fields that may be left out and changed in a few. Some can be
/// planned and some must be refused. The same seed, shop and samples give the same text.
/// @param samples texts of whole jobs.
std::string edge_job(std::uint64_t seed, const Shop& shop, const std::vector<std::string>& samples);

} // namespace ringfill::testing
