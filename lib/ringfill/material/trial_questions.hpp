#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include <ringfill/material/answer.hpp>
#include <ringfill/material/family.hpp>

namespace ringfill {

// The grid a plugin is tried on: thin to thick, little to much, on both sides of the steps common rules have.
inline constexpr std::array trial_walls_m = {0.004, 0.012, 0.020, 0.040, 0.070, 0.120};
inline constexpr std::array trial_hydrogen_mL_per_100g = {3.0, 5.0, 10.0, 18.0};
inline constexpr std::array trial_heat_inputs_J_per_m = {3e5, 1e6, 2.5e6};

/// A base metal and the filler laid on it.
struct TrialMetals {
    const Base* base = nullptr;
    const Filler* filler = nullptr; ///< null: a filler of another family
};

/// Every base metal of a family with every filler of it, or with one of another family when it has none.
std::vector<TrialMetals> trial_metals(const Family& family);

/// "steel/C45 with steel/ER70S-6".
std::string to_string(const Family& family, const TrialMetals& metals);

/// A question on preheat in the middle of the grid, with every number a question can have.
Question middle_question(const Family& family, const TrialMetals& metals);

/// The questions of the grid, the walls rising fastest, then the hydrogen.
std::vector<Question> grid_questions(const Family& family, const TrialMetals& metals);

/// The middle question with each number left out in turn, with none at all, with the hydrogen measured, and
/// on the other topics.
std::vector<Question> odd_questions(const Family& family, const TrialMetals& metals);

/// The grid's questions and the odd ones.
std::vector<Question> all_questions(const Family& family, const TrialMetals& metals);

} // namespace ringfill
