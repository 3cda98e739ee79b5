#include <ringfill/material/trial_questions.hpp>

#include <algorithm>

#include <fmt/format.h>

namespace ringfill {
namespace {

constexpr double combined_at_most_m = 0.1; // as abi.h says
constexpr double mild_K = 283.15;

struct Conditions {
    double wall_m = 0;
    double hydrogen_mL_per_100g = 0;
    double heat_input_J_per_m = 0;
};

void add_composition(Question& question, std::string_view of, const Composition& composition) {
    for (const auto& [element, percent] : composition)
        question.numbers.emplace_back(fmt::format("{}_{}_pct", of, element), percent.value);
}

void add_if_known(Question& question, const char* name, const std::optional<Sourced<double>>& number) {
    if (number)
        question.numbers.emplace_back(name, number->value);
}

Question question_of(const Family& family, const TrialMetals& metals, const Conditions& now) {
    Question question;
    question.topic = "preheat";
    question.grade = metals.base->name;
    question.filler =
        metals.filler ? fmt::format("{}/{}", family.name, metals.filler->name) : "steel/ER70S-6";
    add_composition(question, "base", metals.base->composition);
    if (metals.filler)
        add_composition(question, "deposit", metals.filler->composition);
    question.numbers.insert(question.numbers.end(),
                            {{"wall_m", now.wall_m},
                             {"combined_thickness_m", std::min(2 * now.wall_m, combined_at_most_m)},
                             {"restraint", 3},
                             {"heat_input_J_per_m", now.heat_input_J_per_m},
                             {"hydrogen_mL_per_100g", now.hydrogen_mL_per_100g},
                             {"hydrogen_is_measured", 0},
                             {"ambient_K", mild_K}});
    add_if_known(question, "yield_MPa", metals.base->yield_MPa);
    add_if_known(question, "tensile_MPa", metals.base->tensile_MPa);
    if (metals.base->tempering)
        question.numbers.emplace_back("tempering_K", metals.base->tempering->value.value());
    if (metals.base->softens_over)
        question.numbers.emplace_back("softens_over_K", metals.base->softens_over->value.value());
    return question;
}

} // namespace

std::vector<TrialMetals> trial_metals(const Family& family) {
    std::vector<TrialMetals> all;
    for (const Base& base : family.bases) {
        for (const Filler& filler : family.fillers)
            all.push_back({&base, &filler});
        if (family.fillers.empty())
            all.push_back({&base, nullptr});
    }
    return all;
}

std::string to_string(const Family& family, const TrialMetals& metals) {
    const Question question = middle_question(family, metals);
    return fmt::format("{}/{} with {}", family.name, question.grade, question.filler);
}

Question middle_question(const Family& family, const TrialMetals& metals) {
    return question_of(family, metals,
                       {trial_walls_m[trial_walls_m.size() / 2], trial_hydrogen_mL_per_100g[1],
                        trial_heat_inputs_J_per_m[1]});
}

std::vector<Question> grid_questions(const Family& family, const TrialMetals& metals) {
    std::vector<Question> questions;
    for (const double heat_input : trial_heat_inputs_J_per_m)
        for (const double hydrogen : trial_hydrogen_mL_per_100g)
            for (const double wall : trial_walls_m)
                questions.push_back(question_of(family, metals, {wall, hydrogen, heat_input}));
    return questions;
}

std::vector<Question> odd_questions(const Family& family, const TrialMetals& metals) {
    const Question middle = middle_question(family, metals);
    std::vector<Question> questions;
    for (std::size_t i = 0; i < middle.numbers.size(); ++i) {
        questions.push_back(middle);
        questions.back().numbers.erase(questions.back().numbers.begin() + static_cast<std::ptrdiff_t>(i));
    }
    questions.push_back(middle);
    questions.back().numbers.clear();
    questions.push_back(middle);
    for (auto& [name, value] : questions.back().numbers)
        if (name == "hydrogen_is_measured")
            value = 1;
    questions.push_back(middle);
    questions.back().topic = "advice";
    questions.push_back(questions.back());
    questions.back().numbers.clear();
    return questions;
}

std::vector<Question> all_questions(const Family& family, const TrialMetals& metals) {
    std::vector<Question> questions = grid_questions(family, metals);
    const std::vector<Question> odd = odd_questions(family, metals);
    questions.insert(questions.end(), odd.begin(), odd.end());
    return questions;
}

} // namespace ringfill
