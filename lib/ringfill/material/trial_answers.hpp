#pragma once

#include <string>
#include <vector>

#include <ringfill/material/answer.hpp>

namespace ringfill {

/// An answer as a text that is the same for two answers only when they are, to the last bit of every number.
std::string to_the_bit(const FamilyAnswer& answer);

/// The first case in which a minimum fell where it may not; empty: none was seen.
struct Lowered {
    std::string by_wall;
    std::string by_hydrogen;
};

/// Whether a thicker wall, or more hydrogen, lowers the minimum of a method while its flags stay the same.
/// `answers`: to all_questions() on one pair of metals, which begin with the grid; `metals`: the pair in
/// words.
void look_for_lowered(const std::vector<FamilyAnswer>& answers, const std::string& metals, Lowered& lowered);

} // namespace ringfill
