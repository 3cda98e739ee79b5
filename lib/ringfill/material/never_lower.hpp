#pragma once

#include <string>

#include <ringfill/material/trial_questions.hpp>

namespace ringfill {

/// The first case in which a minimum fell where it may not; empty: none was seen.
struct Lowered {
    std::string by_wall;
    std::string by_hydrogen;
};

/// Asks over the grid whether a thicker wall, or more hydrogen, lowers the minimum of a method while its
/// flags stay the same. Throws Faulty as ask() does.
void look_for_lowered(const Plugin& plugin, const Family& family, const TrialMetals& metals,
                      Lowered& lowered);

} // namespace ringfill
