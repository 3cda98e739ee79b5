#include <ringfill/working/working.hpp>

#include <iterator>

#include <ringfill/fault/place.hpp>

namespace ringfill {

Working worked(std::string figure, std::string formula, std::vector<Input> inputs, Amount value,
               std::string source) {
    return {std::move(figure), std::move(formula),    std::move(inputs),
            value.value,       std::move(value.unit), std::move(source)};
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
    for (Working& one : workings)
        one.figure = member_path(path, one.figure);
    return workings;
}

} // namespace ringfill
