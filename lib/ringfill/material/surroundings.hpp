#pragma once

#include <string>
#include <utility>
#include <vector>

namespace ringfill {

/// What a plugin must leave alone in the process, each with its state in words, in a fixed order: locale,
/// decimal point, working directory, rights of new files, signal handlers, open files, threads. (The
/// arithmetic is guarded around each call.)
using Surroundings = std::vector<std::pair<std::string, std::string>>;

Surroundings surroundings();

} // namespace ringfill
