#pragma once

#include <string>
#include <vector>

#include <ringfill/material/answer.hpp>
#include <ringfill/material/family.hpp>

namespace ringfill {

/// A question on preheat for each base metal of a family with each of its fillers, or with one of another
/// family when it has none: in the middle of the grid, with every number a question can have.
std::vector<Question> middle_questions(const Family& family);

/// The questions asked around a middle one: first the grid, thin to thick and little to much on both sides of
/// the steps common rules have, the walls rising fastest, then the hydrogen; then the middle one with each
/// number left out in turn, with none at all, with the hydrogen measured, and on the other topics.
std::vector<Question> all_questions(const Question& middle);

/// An answer as a text that is the same for two answers only when they are, to the last bit of every number.
std::string to_the_bit(const FamilyAnswer& answer);

/// The first case in which a minimum fell where it may not; empty: none was seen.
struct Lowered {
    std::string by_wall;
    std::string by_hydrogen;
};

/// Whether a thicker wall, or more hydrogen, lowers the minimum of a method while its flags stay the same.
/// `answers`: to all_questions() on one pair of metals; `metals`: the pair in words.
void look_for_lowered(const std::vector<FamilyAnswer>& answers, const std::string& metals, Lowered& lowered);

} // namespace ringfill
