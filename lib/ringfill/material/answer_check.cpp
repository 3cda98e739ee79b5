#include <ringfill/material/answer_sink.hpp>

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstring>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/plugin_file.hpp>

namespace ringfill {
namespace {

using namespace std::string_view_literals;

constexpr std::uint32_t first_figure_size = 96; ///< of rf_figure in version 1.0
constexpr std::uint32_t largest_figure_size = 4'096;
constexpr std::uint64_t most_inputs = 64;
static_assert(sizeof(rf_figure) >= first_figure_size);

// Room for every preheat and every hold there is; a figure in degrees Celsius falls below it.
constexpr double coldest_K = 200;
constexpr double hottest_K = 1'200;

constexpr std::array value_names = {
    "CE_IIW_pct"sv,       "Pcm_pct"sv,     "CET_pct"sv,     "CEN_pct"sv,
    "interpass_max_K"sv,  "post_heat_K"sv, "post_heat_s"sv, "cooling_max_K_per_h"sv,
    "crack_test_wait_s"sv};
constexpr std::array advice_kinds = {"soak"sv,       "slow_cooling"sv, "post_heat"sv,
                                     "crack_test"sv, "interpass"sv,    "technique"sv};

constexpr std::uint32_t known_flags = RF_OUT_OF_COMPOSITION | RF_OUT_OF_THICKNESS | RF_AT_EDGE |
                                      RF_NONE_NEEDED | RF_NO_FIGURE | RF_SECOND_OPINION | RF_NOT_USABLE;
constexpr std::uint32_t without_number = RF_NONE_NEEDED | RF_NO_FIGURE | RF_NOT_USABLE;

[[noreturn]] void broken(std::string what, std::string remedy) {
    throw Breach{std::move(what), std::move(remedy)};
}

template <class List>
bool is_one_of(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

void check_temperature(double kelvin, std::string_view whose) {
    if (kelvin < coldest_K)
        broken(fmt::format("gave {} as {} K, below {} K", whose, kelvin, coldest_K),
               "give it in kelvin, not in degrees Celsius");
    if (kelvin > hottest_K)
        broken(fmt::format("gave {} as {} K, above {} K", whose, kelvin, hottest_K),
               "give it in kelvin, and only what metal can be heated to");
}

void check_finite(double number, std::string_view whose) {
    if (!std::isfinite(number))
        broken(fmt::format("gave {} as {}", whose, number), "give a finite number, or leave the figure out");
}

/// The struct as far as it is known here; what lies past its size is not read.
rf_figure as_known(const rf_figure* figure, std::string_view kind) {
    if (!figure)
        broken(fmt::format("gave a {} that is null", kind), "pass the address of an rf_figure");
    std::uint32_t size = 0;
    std::memcpy(&size, figure, sizeof size);
    if (size < first_figure_size || size > largest_figure_size)
        broken(fmt::format("gave a {} of {} bytes; it must be {} to {}", kind, size, first_figure_size,
                           largest_figure_size),
               "set size to sizeof(rf_figure)");
    rf_figure known = {};
    std::memcpy(&known, figure, std::min<std::size_t>(size, sizeof known));
    return known;
}

std::vector<Input> checked_inputs(const rf_figure& figure, std::string_view whose) {
    if (figure.input_count > most_inputs)
        broken(fmt::format("gave {} with {} inputs; {} is the most", whose, figure.input_count, most_inputs),
               "give only what the formula is made of");
    if (!figure.inputs && figure.input_count > 0)
        broken(fmt::format("gave {} with {} inputs that are null", whose, figure.input_count),
               "pass the address of the inputs, or a count of 0");
    std::vector<Input> inputs;
    for (std::uint64_t i = 0; i < figure.input_count; ++i) {
        const rf_input& input = figure.inputs[i];
        const std::string symbol =
            checked_name(input.symbol, fmt::format("the symbol of input {} of {}", i + 1, whose));
        check_finite(input.value, fmt::format("the input {} of {}", symbol, whose));
        inputs.emplace_back(symbol, input.value,
                            checked_text(input.unit, fmt::format("the unit of {} of {}", symbol, whose)));
    }
    return inputs;
}

/// All but name and number.
void check_rest(AnsweredFigure& into, const rf_figure& figure, std::string_view whose,
                const Bibliography& sources) {
    into.formula = checked_text(figure.formula, fmt::format("the formula of {}", whose));
    into.inputs = checked_inputs(figure, whose);
    into.source = checked_source(figure.source, whose, sources);
    into.note = checked_text(figure.note, fmt::format("the note of {}", whose));
}

void check_flags(std::uint32_t flags, std::string_view whose) {
    if ((flags & ~known_flags) != 0)
        broken(
            fmt::format("gave {} with the flags {}, some of which this program does not know", whose, flags),
            "use the flags of version 1 only");
    if (std::popcount(flags & without_number) > 1)
        broken(fmt::format("gave {} with flags that contradict each other", whose),
               "set one of RF_NONE_NEEDED, RF_NO_FIGURE and RF_NOT_USABLE at most");
}

} // namespace

std::string checked_text(const rf_text& text, std::string_view what) {
    if (text.size == 0)
        return {};
    if (!text.data)
        broken(fmt::format("gave {} as null with a size of {}", what, text.size),
               "give the text, or a size of 0");
    if (text.size > RF_TEXT_LONGEST)
        broken(fmt::format("gave {} of {} bytes; {} is the most", what, text.size, RF_TEXT_LONGEST),
               "say it shorter");
    const std::string_view view(text.data, static_cast<std::size_t>(text.size));
    if (const auto byte = not_utf8_at(view))
        broken(fmt::format("gave {} that is not UTF-8 at byte {}", what, *byte), "give UTF-8");
    if (!is_clean(view))
        broken(fmt::format("gave {} with characters that are not for people: {}", what, in_quotes(view)),
               "leave out control characters, line breaks and marks of direction");
    return std::string(view);
}

std::string checked_name(const rf_text& text, std::string_view what) {
    std::string name = checked_text(text, what);
    if (name.empty())
        broken(fmt::format("left {} empty", what), "say it");
    return name;
}

std::string checked_source(const rf_text& key, std::string_view whose, const Bibliography& sources) {
    std::string source = checked_text(key, fmt::format("the source of {}", whose));
    if (source.empty())
        broken(fmt::format("gave {} without a source", whose), "name a key of the bibliography");
    if (!sources.contains(source))
        broken(fmt::format("gave {} with the source {}, which is not in the bibliography", whose,
                           in_quotes(source)),
               "add it to the sources of the family's table");
    return source;
}

AnsweredFigure checked_value(const rf_figure* said, const Bibliography& sources) {
    const rf_figure figure = as_known(said, "value");
    AnsweredFigure value;
    value.name = checked_name(figure.name, "the name of a value");
    if (!is_one_of(value_names, value.name))
        broken(fmt::format("gave the value {}, which this program does not know", in_quotes(value.name)),
               "use a name of the list in abi.h");
    const std::string whose = fmt::format("the value {}", value.name);
    if (figure.flags != 0)
        broken(fmt::format("gave {} with the flags {}", whose, figure.flags), "set flags to 0 for a value");
    value.number = figure.number;
    check_finite(value.number, whose);
    if (value.name.ends_with("_K"))
        check_temperature(value.number, whose);
    else if (value.number < 0)
        broken(fmt::format("gave {} as {}", whose, value.number), "give a figure that is not negative");
    check_rest(value, figure, whose, sources);
    return value;
}

AnsweredMethod checked_method(const rf_figure* said, const Bibliography& sources) {
    const rf_figure figure = as_known(said, "method");
    AnsweredMethod method;
    method.name = checked_name(figure.name, "the name of a method");
    const std::string whose = fmt::format("the method {}", in_quotes(method.name));
    check_flags(figure.flags, whose);
    const auto is_set = [&](std::uint32_t flag) { return (figure.flags & flag) != 0; };
    for (const auto& [flag, said_by_it] : method_flags)
        method.*said_by_it = is_set(flag);
    if (!is_set(without_number)) {
        check_finite(figure.number, fmt::format("the minimum of {}", whose));
        check_temperature(figure.number, fmt::format("the minimum of {}", whose));
        method.number = figure.number;
    }
    check_rest(method, figure, whose, sources);
    if (method.not_usable && method.note.empty())
        broken(fmt::format("gave {} as not usable without a note", whose), "say in the note why not");
    return method;
}

Advice checked_advice(const rf_text& kind, const rf_text& text, const rf_text& source,
                      const Bibliography& sources) {
    Advice advice;
    advice.kind = checked_name(kind, "the kind of an advice");
    if (!is_one_of(advice_kinds, advice.kind))
        broken(fmt::format("gave advice of the kind {}, which this program does not know",
                           in_quotes(advice.kind)),
               "use a kind of the list in abi.h");
    const std::string whose = fmt::format("the advice on {}", advice.kind);
    advice.text = checked_name(text, fmt::format("the text of {}", whose));
    advice.source = checked_source(source, whose, sources);
    return advice;
}

} // namespace ringfill
