#include <ringfill/report/text/working_text.hpp>

#include <ringfill/report/text/frame.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ringfill/report/text/layout.hpp>
#include <ringfill/report/text/sentence.hpp>
namespace ringfill {
namespace {

/// Lists longer than this are shown by their ends; the result file has them whole.
constexpr std::size_t longest_input = 12;

std::string with_unit(const std::string& number, const std::string& unit) {
    return unit.empty() ? number : number + " " + unit;
}

std::string list_of(const std::vector<double>& values) {
    std::string text;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (values.size() > longest_input && i == longest_input / 2) {
            i = values.size() - longest_input / 2;
            text += ", ...";
        }
        text += fmt::format("{}{:.7g}", text.empty() ? "" : ", ", values[i]);
    }
    return "(" + text + ")";
}

} // namespace

std::string inputs_of(const Working& work) {
    std::string text;
    for (const Input& input : work.inputs)
        text += fmt::format(
            "{}{} = {}", text.empty() ? "" : ", ", input.symbol,
            with_unit(input.is_list ? list_of(input.list) : fmt::format("{:.7g}", input.value), input.unit));
    return text;
}

std::string working_text(const Plan& plan, const Style& style) {
    std::string text = style.strong("WORKING");
    text += fmt::format(" ({} figures)\n", plan.working.size());
    for (const Working& work : plan.working) {
        text += wrapped(fmt::format("{} = {} [{}]", work.figure,
                                    with_unit(fmt::format("{:.7g}", work.value), work.unit), work.source),
                        "- ");
        text += wrapped(work.formula, "    = ");
        text += wrapped(inputs_of(work), "    ");
    }
    return text + closing_line();
}

} // namespace ringfill
