#include <ringfill/working/working.hpp>

#include <algorithm>
#include <iterator>
#include <string_view>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

std::vector<Input> named_in(std::string_view formula, const std::vector<Input>& inputs) {
    constexpr std::string_view of_names = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_.";
    std::vector<Input> named;
    while (!formula.empty()) {
        const std::size_t end = std::min(formula.find_first_not_of(of_names), formula.size());
        const std::string_view name = formula.substr(0, end);
        const auto input = ranges::find(inputs, name, &Input::symbol);
        if (input != inputs.end() && !ranges::contains(named, name, &Input::symbol))
            named.push_back(*input);
        formula.remove_prefix(std::max<std::size_t>(end, 1));
    }
    return named;
}

} // namespace

Working worked(std::string figure, std::string formula, std::vector<Input> inputs, Amount value,
               std::string source) {
    return {std::move(figure), std::move(formula),    std::move(inputs),
            value.value,       std::move(value.unit), std::move(source)};
}

std::vector<Working> worked(const std::vector<Input>& inputs, std::vector<WorkedFigure> figures) {
    std::vector<Working> work;
    for (WorkedFigure& worked_figure : figures) {
        if (worked_figure.formula.empty())
            continue;
        std::vector<Input> named = named_in(worked_figure.formula, inputs);
        work.push_back(worked(std::move(worked_figure.figure), std::move(worked_figure.formula),
                              std::move(named), std::move(worked_figure.value),
                              std::move(worked_figure.source)));
    }
    return work;
}

std::vector<Input> joined(std::vector<Input> own, const std::vector<Input>& shared) {
    own.insert(own.end(), shared.begin(), shared.end());
    return own;
}

Working taken(std::string figure, Input input, std::string source) {
    const Amount amount{input.value, input.unit};
    std::string formula = "1*" + input.symbol;
    return worked(std::move(figure), std::move(formula), {std::move(input)}, amount, std::move(source));
}

void append(std::vector<Working>& all, std::vector<Working> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

std::vector<Working> under(const std::string& path, std::vector<Working> workings) {
    for (Working& working : workings)
        working.figure = member_path(path, working.figure);
    return workings;
}

} // namespace ringfill
