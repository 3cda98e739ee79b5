#include <ringfill/material/trial.hpp>

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill {
namespace {

constexpr std::array walls_m = {0.004, 0.012, 0.020, 0.040, 0.070, 0.120};
constexpr std::array hydrogen_mL_per_100g = {3.0, 5.0, 10.0, 18.0};
constexpr std::array heat_inputs_J_per_m = {3e5, 1e6, 2.5e6};
constexpr std::size_t grid_size = walls_m.size() * hydrogen_mL_per_100g.size() * heat_inputs_J_per_m.size();

constexpr double combined_at_most_m = 0.1; // as abi.h says
constexpr double mild_K = 283.15;
constexpr double rounding_K = 1e-9; // what arithmetic alone may move a minimum by

/// The question with some of its numbers changed.
Question with(Question question, const std::vector<std::pair<std::string, double>>& changes) {
    for (auto& [name, value] : question.numbers)
        for (const auto& [changed, to] : changes)
            value = name == changed ? to : value;
    return question;
}

Question at_point(const Question& question, double wall, double hydrogen, double heat_input) {
    return with(question, {{"wall_m", wall},
                           {"combined_thickness_m", std::min(2 * wall, combined_at_most_m)},
                           {"heat_input_J_per_m", heat_input},
                           {"hydrogen_mL_per_100g", hydrogen}});
}

void add_composition(Question& question, std::string_view of, const Composition& composition) {
    for (const auto& [element, percent] : composition)
        question.numbers.emplace_back(fmt::format("{}_{}_pct", of, element), percent.value);
}

/// @param filler null: one of another family
Question middle_question(const Family& family, const Base& base, const Filler* filler) {
    Question question{
        "preheat", base.name, filler ? fmt::format("{}/{}", family.name, filler->name) : "steel/ER70S-6", {}};
    add_composition(question, "base", base.composition);
    if (filler)
        add_composition(question, "deposit", filler->composition);
    question.numbers.insert(question.numbers.end(), {{"wall_m", 0},
                                                     {"combined_thickness_m", 0},
                                                     {"restraint", 3},
                                                     {"heat_input_J_per_m", 0},
                                                     {"hydrogen_mL_per_100g", 0},
                                                     {"hydrogen_is_measured", 0},
                                                     {"ambient_K", mild_K}});
    for (const auto& [name, figure] :
         {std::pair("yield_MPa", &base.yield_MPa), std::pair("tensile_MPa", &base.tensile_MPa)})
        if (*figure)
            question.numbers.emplace_back(name, (*figure)->value);
    for (const auto& [name, figure] :
         {std::pair("tempering_K", &base.tempering), std::pair("softens_over_K", &base.softens_over)})
        if (*figure)
            question.numbers.emplace_back(name, (*figure)->value.value());
    return at_point(question, walls_m[walls_m.size() / 2], hydrogen_mL_per_100g[1], heat_inputs_J_per_m[1]);
}

/// Texts of an answer hold no control character, so one parts them.
std::string to_the_bit(const AnsweredFigure& figure) {
    std::string text = fmt::format("{}\x1F{:a}\x1F{}\x1F{}\x1F{}\x1F", figure.name, figure.number,
                                   figure.formula, figure.source, figure.note);
    for (const Input& input : figure.inputs)
        text += fmt::format("{}\x1F{:a}\x1F{}\x1F", input.symbol, input.value, input.unit);
    return text;
}

/// How a method asks less in the second answer, or nothing.
std::string fall(const FamilyAnswer& first, const FamilyAnswer& second) {
    for (const AnsweredMethod& before : first.methods)
        for (const AnsweredMethod& after : second.methods)
            if (before.name == after.name && before.has_number() && before.flags == after.flags &&
                after.number < before.number - rounding_K)
                return fmt::format("{} fell from {:.10g} K to {:.10g} K", in_quotes(before.name),
                                   before.number, after.number);
    return {};
}

} // namespace

std::vector<Question> middle_questions(const Family& family) {
    std::vector<Question> questions;
    for (const Base& base : family.bases) {
        for (const Filler& filler : family.fillers)
            questions.push_back(middle_question(family, base, &filler));
        if (family.fillers.empty())
            questions.push_back(middle_question(family, base, nullptr));
    }
    return questions;
}

std::vector<Question> all_questions(const Question& middle) {
    std::vector<Question> questions;
    for (const double heat_input : heat_inputs_J_per_m)
        for (const double content : hydrogen_mL_per_100g)
            for (const double thickness : walls_m)
                questions.push_back(at_point(middle, thickness, content, heat_input));
    for (std::size_t i = 0; i < middle.numbers.size(); ++i) {
        questions.push_back(middle);
        questions.back().numbers.erase(questions.back().numbers.begin() + static_cast<std::ptrdiff_t>(i));
    }
    questions.push_back({middle.topic, middle.grade, middle.filler, {}});
    questions.push_back(with(middle, {{"hydrogen_is_measured", 1}}));
    questions.push_back({"advice", middle.grade, middle.filler, middle.numbers});
    questions.push_back({"advice", middle.grade, middle.filler, {}});
    return questions;
}

std::string to_the_bit(const FamilyAnswer& answer) {
    std::string text = answer.supported ? "supported" : "unsupported";
    for (const AnsweredFigure& value : answer.values)
        text += "value\x1F" + to_the_bit(value);
    for (const AnsweredMethod& method : answer.methods)
        text += fmt::format("method\x1F{}\x1F{}", method.flags, to_the_bit(method));
    for (const Advice& advice : answer.advice)
        text += fmt::format("advice\x1F{}\x1F{}\x1F{}\x1F", advice.kind, advice.text, advice.source);
    return text;
}

void look_for_lowered(const std::vector<FamilyAnswer>& answers, const std::string& metals, Lowered& lowered) {
    constexpr std::size_t walls = walls_m.size();
    const auto look = [&](std::string& found, std::size_t before, std::size_t after,
                          const std::string& when) {
        const std::string fallen = found.empty() ? fall(answers.at(before), answers.at(after)) : "";
        if (!fallen.empty())
            found = fmt::format("{}, {} when the {}", metals, fallen, when);
    };
    for (std::size_t i = 0; i < grid_size; ++i) {
        const std::size_t wall = i % walls;
        const std::size_t level = i / walls % hydrogen_mL_per_100g.size();
        if (wall > 0)
            look(lowered.by_wall, i - 1, i,
                 fmt::format("wall grew from {} m to {} m", walls_m[wall - 1], walls_m[wall]));
        if (level > 0)
            look(lowered.by_hydrogen, i - walls, i,
                 fmt::format("hydrogen rose from {} to {} mL/100 g", hydrogen_mL_per_100g[level - 1],
                             hydrogen_mL_per_100g[level]));
    }
}

} // namespace ringfill
