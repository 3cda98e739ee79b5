#include <ringfill/working/working.hpp>

#include <algorithm>
#include <string_view>

#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/find.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/indirect.hpp>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

bool is_of_name(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '.';
}

/// The inputs that a formula names, in the order it names them.
std::vector<Input> named_in(std::string_view formula, const std::vector<Input>& own,
                            const std::vector<Input>& shared) {
    std::vector<const Input*> named;
    for (auto begin = formula.begin(); begin != formula.end();) {
        const auto* const end = std::find_if_not(begin, formula.end(), is_of_name);
        const std::string_view name(begin, end);
        begin = std::max(end, begin + 1);
        if (name.empty() || name.front() <= '9' || ranges::contains(named, name, &Input::symbol))
            continue;
        for (const auto* inputs : {&own, &shared})
            if (const auto input = ranges::find(*inputs, name, &Input::symbol); input != inputs->end()) {
                named.push_back(&*input);
                break;
            }
    }
    return named | ranges::views::indirect | ranges::to<std::vector>(); // in one piece of memory at once
}

} // namespace

Working worked(std::string figure, std::string formula, std::vector<Input> inputs, Amount value,
               std::string source) {
    return {std::move(figure), std::move(formula),    std::move(inputs),
            value.value,       std::move(value.unit), std::move(source)};
}

std::vector<Working> worked(const std::vector<Input>& own, std::initializer_list<WorkedFigure> figures,
                            const std::vector<Input>& shared) {
    std::vector<Working> work;
    work.reserve(figures.size());
    for (const auto& [figure, formula, value, source] : figures)
        if (!formula.empty())
            work.push_back(worked(std::string(figure), std::string(formula), named_in(formula, own, shared),
                                  value, source));
    return work;
}

Working taken(std::string figure, Input input, std::string source) {
    const Amount amount{input.value, input.unit};
    std::string formula = "1*" + input.symbol;
    return worked(std::move(figure), std::move(formula), {std::move(input)}, amount, std::move(source));
}

std::vector<Working> under(const std::string& path, std::vector<Working> workings) {
    const std::string before = member_path(path, "");
    for (Working& working : workings)
        working.figure.insert(0, before);
    return workings;
}

} // namespace ringfill
