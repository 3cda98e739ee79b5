#include "composition.hpp"

#include <fmt/format.h>

#include "question.hpp"

namespace ringfill::steel {
namespace {

constexpr double most_alloy_pct = 10;
constexpr double most_carbon_pct = 1.2;  // tool steel and iron begin
constexpr double lean_manganese_pct = 5; // lean manganese steel begins, where carbon is over the next
constexpr double low_carbon_pct = 0.5;

constexpr double most_copper_metal_pct = 5;

/// Over one of them a metal is no ferritic steel. Common practice, no source.
constexpr Range alloy_limits[] = {
    {"Mn", 0, most_alloy_pct}, {"Cr", 0, most_alloy_pct}, {"Ni", 0, most_alloy_pct}};

/// Over one of them a deposit is none either; 13 % Cr hardens in air as steel does. Likewise.
constexpr double most_chromium_pct = 16;
constexpr Range deposit_limits[] = {{"Mn", 0, most_alloy_pct},        {"Cr", 0, most_chromium_pct},
                                    {"Ni", 0, most_alloy_pct},        {"Al", 0, most_copper_metal_pct},
                                    {"Cu", 0, most_copper_metal_pct}, {"Sn", 0, most_copper_metal_pct}};

constexpr std::string_view unit_suffix = "_pct";

std::string join(const std::vector<std::string_view>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += fmt::format("{}{}", i == 0 ? "" : i + 1 == words.size() ? " and " : ", ", words[i]);
    return text;
}

bool is_lean_manganese_steel(const Composition& metal) {
    return metal.pct("Mn") >= lean_manganese_pct && metal.pct("C") > low_carbon_pct;
}

} // namespace

double Composition::pct(std::string_view element) const {
    const auto found = stated.find(element);
    return found == stated.end() ? 0 : found->second;
}

Composition read_composition(const rf_question& question, std::string_view prefix) {
    Composition metal;
    for (std::uint64_t i = 0; i < question.number_count; ++i) {
        const std::string_view name = view_of(question.numbers[i].name);
        if (!name.starts_with(prefix) || !name.ends_with(unit_suffix) ||
            name.size() <= prefix.size() + unit_suffix.size())
            continue;
        const double value = question.numbers[i].value;
        if (!(value >= 0 && value <= 100))
            throw Refusal(std::string(name), fmt::format("{} is no percentage; give 0 to 100", value));
        metal.stated.emplace(name.substr(prefix.size(), name.size() - prefix.size() - unit_suffix.size()),
                             value);
    }
    return metal;
}

std::string why_no_ferritic_steel(const Composition& base) {
    for (const Range& limit : alloy_limits)
        if (base.pct(limit.element) > limit.most)
            return fmt::format("with {} % {} the base metal is no ferritic steel",
                               show_pct(base.pct(limit.element)), limit.element);
    if (base.pct("C") >= most_carbon_pct)
        return fmt::format("with {} % C the base metal is no ferritic steel", show_pct(base.pct("C")));
    if (is_lean_manganese_steel(base))
        return fmt::format("with {} % Mn and {} % C the base metal is no ferritic steel",
                           show_pct(base.pct("Mn")), show_pct(base.pct("C")));
    return {};
}

std::string why_not_usable(const Composition& base) {
    if (base.stated.empty())
        return "the composition of the base metal is not known";
    if (std::string why = why_no_ferritic_steel(base); !why.empty())
        return why;
    std::vector<std::string_view> missing;
    for (const std::string_view element : {"C", "Mn"})
        if (!base.states(element))
            missing.push_back(element);
    if (missing.empty())
        return {};
    return fmt::format("{} of the base metal {} not stated", join(missing),
                       missing.size() == 1 ? "is" : "are");
}

bool ferritic(const Composition& deposit) {
    return outside(deposit, deposit_limits).empty() && deposit.pct("C") < most_carbon_pct &&
           !is_lean_manganese_steel(deposit);
}

std::vector<std::string> outside(const Composition& metal, std::span<const Range> ranges) {
    std::vector<std::string> found;
    for (const Range& range : ranges) {
        const double pct = metal.pct(range.element);
        if (pct > range.most)
            found.push_back(fmt::format("{} {} % is over the {} % it was made for", range.element,
                                        show_pct(pct), show_pct(range.most)));
        if (pct < range.least)
            found.push_back(fmt::format("{} {} % is under the {} % it was made for", range.element,
                                        show_pct(pct), show_pct(range.least)));
    }
    return found;
}

std::string not_stated(const Composition& metal, std::string_view whose,
                       std::span<const std::string_view> elements) {
    std::vector<std::string_view> missing;
    for (const std::string_view element : elements)
        if (!metal.states(element))
            missing.push_back(element);
    if (missing.empty())
        return {};
    return fmt::format("{} of {} {} as 0", join(missing), whose,
                       missing.size() == 1 ? "is not stated and counts" : "are not stated and count");
}

std::vector<Input> inputs_of(const Composition& metal, std::span<const std::string_view> elements) {
    std::vector<Input> inputs;
    for (const std::string_view element : elements)
        inputs.push_back({std::string(element), metal.pct(element), "%"});
    return inputs;
}

std::string show_pct(double percent) {
    std::string text = fmt::format("{:.4f}", percent);
    while (text.back() == '0' && text[text.size() - 3] != '.')
        text.pop_back();
    return text;
}

} // namespace ringfill::steel
