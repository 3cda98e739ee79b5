#include <ringfill/working/working.hpp>

#include <algorithm>
#include <string_view>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

bool is_of_name(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '.';
}

std::vector<Input> named_in(std::string_view formula, const std::vector<Input>& own,
                            const std::vector<Input>& shared) {
    std::vector<Input> named;
    for (auto begin = formula.begin(); begin != formula.end();) {
        const auto* const end = std::find_if_not(begin, formula.end(), is_of_name);
        const std::string_view name(begin, end);
        begin = std::max(end, begin + 1);
        if (name.empty() || name.front() <= '9' || ranges::contains(named, name, &Input::symbol))
            continue;
        for (const auto* inputs : {&own, &shared})
            if (const auto input = ranges::find(*inputs, name, &Input::symbol); input != inputs->end()) {
                named.push_back(*input);
                break;
            }
    }
    return named;
}

} // namespace

Working worked(std::string figure, std::string formula, std::vector<Input> inputs, Amount value,
               std::string source) {
    return {std::move(figure), std::move(formula),    std::move(inputs),
            value.value,       std::move(value.unit), std::move(source)};
}

std::vector<Working> worked(const std::vector<Input>& own, std::vector<WorkedFigure> figures,
                            const std::vector<Input>& shared) {
    std::vector<Working> work;
    work.reserve(figures.size());
    for (WorkedFigure& worked_figure : figures) {
        if (worked_figure.formula.empty())
            continue;
        work.push_back(worked(std::string(worked_figure.figure), std::string(worked_figure.formula),
                              named_in(worked_figure.formula, own, shared), std::move(worked_figure.value),
                              std::move(worked_figure.source)));
    }
    return work;
}

Working taken(std::string figure, Input input, std::string source) {
    const Amount amount{input.value, input.unit};
    std::string formula = "1*" + input.symbol;
    return worked(std::move(figure), std::move(formula), {std::move(input)}, amount, std::move(source));
}

std::vector<Working> under(const std::string& path, std::vector<Working> workings) {
    for (Working& working : workings)
        working.figure = member_path(path, working.figure);
    return workings;
}

} // namespace ringfill
