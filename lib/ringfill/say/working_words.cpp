#include <ringfill/say/working_words.hpp>

#include <fmt/format.h>

#include <ringfill/fault/listed.hpp>
#include <ringfill/say/sentence.hpp>

namespace ringfill {
namespace {

/// Lists longer than this are shown by their ends; the result file has them whole.
constexpr std::size_t longest_input = 12;

std::string with_unit(const std::string& number, const std::string& unit) {
    return unit.empty() ? number : number + " " + unit;
}

std::string number_of(double value) {
    return fmt::format("{:.7g}", value);
}

std::string list_of(const std::vector<double>& values) {
    if (values.size() <= longest_input)
        return listed(values, ", ", number_of);
    constexpr std::ptrdiff_t end = longest_input / 2;
    return listed(std::vector(values.begin(), values.begin() + end), ", ", number_of) + ", ..., " +
           listed(std::vector(values.end() - end, values.end()), ", ", number_of);
}

} // namespace

std::string value_text(const Working& work) {
    return with_unit(number_of(work.value), work.unit);
}

std::string inputs_of(const Working& work) {
    return listed(work.inputs, ", ", [](const Input& input) {
        const std::string value = input.is_list ? "(" + list_of(input.list) + ")" : number_of(input.value);
        return fmt::format("{} = {}", input.symbol, with_unit(value, input.unit));
    });
}

} // namespace ringfill
