#include "asking.hpp"

#include <algorithm>
#include <stdexcept>

#include <fmt/format.h>

#include "steel/rules.hpp"

namespace ringfill::testing {
namespace {

std::string copy(rf_text text) {
    return text.size == 0 ? std::string() : std::string(text.data, text.size);
}

steel::Figure copy(const rf_figure& figure) {
    steel::Figure copied{copy(figure.name),   figure.number,     copy(figure.formula), {},
                         copy(figure.source), copy(figure.note), figure.flags};
    for (std::uint64_t i = 0; i < figure.input_count; ++i)
        copied.inputs.push_back(
            {copy(figure.inputs[i].symbol), figure.inputs[i].value, copy(figure.inputs[i].unit)});
    return copied;
}

Said& said_of(void* context) {
    return *static_cast<Said*>(context);
}

void take_value(void* context, const rf_figure* figure) noexcept {
    said_of(context).values.push_back(copy(*figure));
}

void take_method(void* context, const rf_figure* figure) noexcept {
    said_of(context).methods.push_back(copy(*figure));
}

void take_advice(void* context, rf_text kind, rf_text text, rf_text source) noexcept {
    said_of(context).advice.push_back({copy(kind), copy(text), copy(source)});
}

void take_fault(void* context, rf_text where, rf_text what) noexcept {
    said_of(context).fault += fmt::format("{}: {}", copy(where), copy(what));
}

const steel::Figure* find(const std::vector<steel::Figure>& figures, std::string_view name) {
    const auto found =
        std::ranges::find_if(figures, [&](const steel::Figure& figure) { return figure.name == name; });
    return found == figures.end() ? nullptr : &*found;
}

const steel::Figure& get(const std::vector<steel::Figure>& figures, std::string_view name) {
    if (const steel::Figure* found = find(figures, name))
        return *found;
    throw std::runtime_error(fmt::format("{} was not said", name));
}

} // namespace

const steel::Figure& Said::method(std::string_view name) const {
    return get(methods, name);
}

const steel::Figure& Said::value(std::string_view name) const {
    return get(values, name);
}

bool Said::has_method(std::string_view name) const {
    return find(methods, name) != nullptr;
}

bool Said::has_value(std::string_view name) const {
    return find(values, name) != nullptr;
}

std::string Said::texts(std::string_view kind) const {
    std::string all;
    for (const SaidAdvice& one : advice)
        if (one.kind == kind)
            all += fmt::format("{} [{}]\n", one.text, one.source);
    return all;
}

Said ask_steel(std::string_view topic, const Numbers& numbers) {
    std::vector<rf_number> told;
    for (const auto& [name, value] : numbers)
        told.push_back({{name.data(), name.size()}, value});
    Said said;
    const rf_sink sink{sizeof(rf_sink), 0, &said, take_value, take_method, take_advice, take_fault};
    const rf_question question{sizeof(rf_question), 0,          {topic.data(), topic.size()}, {}, {},
                               told.data(),         told.size()};
    said.status = steel_answer(&sink, &question);
    return said;
}

Numbers with(Numbers numbers, const std::string& prefix, const Percent& metal) {
    for (const auto& [element, percent] : metal)
        numbers[fmt::format("{}{}_pct", prefix, element)] = percent;
    return numbers;
}

Numbers with(Numbers numbers, const std::string& name, double value) {
    numbers[name] = value;
    return numbers;
}

Numbers without(Numbers numbers, const std::string& name) {
    numbers.erase(name);
    return numbers;
}

Percent plain_steel(double carbon, double manganese) {
    return {{"C", carbon}, {"Mn", manganese}, {"Si", 0}, {"Cr", 0}, {"Mo", 0},
            {"V", 0},      {"Ni", 0},         {"Cu", 0}, {"Nb", 0}, {"B", 0}};
}

Numbers usual() {
    const Numbers situation = {{"wall_m", 0.025},
                               {"combined_thickness_m", 0.05},
                               {"restraint", 2},
                               {"heat_input_J_per_m", 1.5e6},
                               {"hydrogen_mL_per_100g", 5},
                               {"ambient_K", 293.15},
                               {"yield_MPa", 355}};
    return with(with(situation, "base_", plain_steel(0.20, 1.20)), "deposit_", plain_steel(0.08, 1.00));
}

double degC(const steel::Figure& method) {
    return method.number - 273.15;
}

} // namespace ringfill::testing
