#include <ringfill/material/trial_answers.hpp>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/answer_sink.hpp>
#include <ringfill/material/trial_questions.hpp>

namespace ringfill {
namespace {

/// Texts of an answer hold no control character, so one parts them.
void add(std::string& text, const std::string& part) {
    text += part;
    text += '\x1F';
}

void add(std::string& text, double number) {
    add(text, fmt::format("{:a}", number));
}

void add_figure(std::string& text, const AnsweredFigure& figure) {
    add(text, figure.name);
    add(text, figure.number);
    add(text, figure.formula);
    for (const Input& input : figure.inputs) {
        add(text, input.symbol);
        for (const double value : input.values())
            add(text, value);
        add(text, input.unit);
    }
    add(text, figure.source);
    add(text, figure.note);
}

constexpr double rounding_K = 1e-9; // what arithmetic alone may move a minimum by

std::string flags_of(const AnsweredMethod& method) {
    std::string flags;
    for (const auto& [flag, said_by_it] : method_flags)
        flags += method.*said_by_it ? '1' : '0';
    return flags;
}

bool has_figure(const AnsweredMethod& method) {
    return !method.none_needed && !method.no_figure && !method.not_usable;
}

/// How a method asks less in the second answer, or nothing.
std::string fall(const FamilyAnswer& first, const FamilyAnswer& second) {
    for (const AnsweredMethod& before : first.methods)
        for (const AnsweredMethod& after : second.methods)
            if (before.name == after.name && has_figure(before) && flags_of(before) == flags_of(after) &&
                after.number < before.number - rounding_K)
                return fmt::format("{} fell from {:.10g} K to {:.10g} K", in_quotes(before.name),
                                   before.number, after.number);
    return {};
}

} // namespace

std::string to_the_bit(const FamilyAnswer& answer) {
    std::string text = answer.supported ? "supported" : "unsupported";
    for (const AnsweredFigure& value : answer.values) {
        add(text, "value");
        add_figure(text, value);
    }
    for (const AnsweredMethod& method : answer.methods) {
        add(text, "method");
        text += flags_of(method);
        add_figure(text, method);
    }
    for (const Advice& advice : answer.advice) {
        add(text, "advice");
        add(text, advice.kind);
        add(text, advice.text);
        add(text, advice.source);
    }
    return text;
}

void look_for_lowered(const std::vector<FamilyAnswer>& answers, const std::string& metals, Lowered& lowered) {
    constexpr std::size_t walls = trial_walls_m.size();
    constexpr std::size_t levels = trial_hydrogen_mL_per_100g.size();
    constexpr std::size_t grid = walls * levels * trial_heat_inputs_J_per_m.size();
    for (std::size_t i = 0; i < grid; ++i) {
        const std::size_t wall = i % walls;
        const std::size_t level = i / walls % levels;
        if (lowered.by_wall.empty() && wall > 0)
            if (const std::string how = fall(answers.at(i - 1), answers.at(i)); !how.empty())
                lowered.by_wall = fmt::format("{}, {} when the wall grew from {} m to {} m", metals, how,
                                              trial_walls_m[wall - 1], trial_walls_m[wall]);
        if (lowered.by_hydrogen.empty() && level > 0)
            if (const std::string how = fall(answers.at(i - walls), answers.at(i)); !how.empty())
                lowered.by_hydrogen =
                    fmt::format("{}, {} when the hydrogen rose from {} to {} mL/100 g", metals, how,
                                trial_hydrogen_mL_per_100g[level - 1], trial_hydrogen_mL_per_100g[level]);
    }
}

} // namespace ringfill
