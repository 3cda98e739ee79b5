#include <ringfill/material/answer_check.hpp>

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstring>

#include <range/v3/algorithm/contains.hpp>

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

double checked_finite(double number, std::string_view whose) {
    refuse_if(!std::isfinite(number), "give a finite number, or leave the figure out", "gave {} as {}", whose,
              number);
    return number;
}

double checked_temperature(double kelvin, std::string_view whose) {
    checked_finite(kelvin, whose);
    refuse_if(kelvin < coldest_K, "give it in kelvin, not in degrees Celsius", "gave {} as {} K, below {} K",
              whose, kelvin, coldest_K);
    refuse_if(kelvin > hottest_K, "give it in kelvin, and only what metal can be heated to",
              "gave {} as {} K, above {} K", whose, kelvin, hottest_K);
    return kelvin;
}

/// The struct as far as it is known here; what lies past its size is not read.
rf_figure as_known(const rf_figure* figure, std::string_view kind) {
    refuse_if(!figure, "pass the address of an rf_figure", "gave a {} that is null", kind);
    std::uint32_t size = 0;
    std::memcpy(&size, figure, sizeof size);
    refuse_if(size < first_figure_size || size > largest_figure_size, "set size to sizeof(rf_figure)",
              "gave a {} of {} bytes; it must be {} to {}", kind, size, first_figure_size,
              largest_figure_size);
    rf_figure known = {};
    std::memcpy(&known, figure, std::min<std::size_t>(size, sizeof known));
    return known;
}

std::vector<Input> checked_inputs(const rf_figure& figure, std::string_view whose) {
    refuse_if(figure.input_count > most_inputs, "give only what the formula is made of",
              "gave {} with {} inputs; {} is the most", whose, figure.input_count, most_inputs);
    refuse_if(!figure.inputs && figure.input_count > 0, "pass the address of the inputs, or a count of 0",
              "gave {} with {} inputs that are null", whose, figure.input_count);
    std::vector<Input> inputs;
    for (std::uint64_t i = 0; i < figure.input_count; ++i) {
        const auto& [symbol, value, unit] = figure.inputs[i];
        const std::string name =
            checked_name(symbol, fmt::format("the symbol of input {} of {}", i + 1, whose));
        checked_finite(value, fmt::format("the input {} of {}", name, whose));
        inputs.emplace_back(name, value,
                            checked_text(unit, fmt::format("the unit of {} of {}", name, whose)));
    }
    return inputs;
}

/// The key of a source that the bibliography has.
std::string checked_source(const rf_text& key, std::string_view whose, const Bibliography& sources) {
    std::string source = checked_text(key, fmt::format("the source of {}", whose));
    refuse_if(source.empty(), "name a key of the bibliography", "gave {} without a source", whose);
    refuse_if(!sources.contains(source), "add it to the sources of the family's table",
              "gave {} with the source {}, which is not in the bibliography", whose, Quoted{source});
    return source;
}

/// All but name and number.
void check_rest(AnsweredFigure& into, const rf_figure& figure, std::string_view whose,
                const Bibliography& sources) {
    into.formula = checked_text(figure.formula, fmt::format("the formula of {}", whose));
    into.inputs = checked_inputs(figure, whose);
    into.source = checked_source(figure.source, whose, sources);
    into.note = checked_text(figure.note, fmt::format("the note of {}", whose));
}

} // namespace

std::string checked_text(const rf_text& text, std::string_view what) {
    if (text.size == 0)
        return {};
    refuse_if(!text.data, "give the text, or a size of 0", "gave {} as null with a size of {}", what,
              text.size);
    refuse_if(text.size > RF_TEXT_LONGEST, "say it shorter", "gave {} of {} bytes; {} is the most", what,
              text.size, RF_TEXT_LONGEST);
    const std::string_view view(text.data, static_cast<std::size_t>(text.size));
    const auto byte = not_utf8_at(view);
    refuse_if(byte.has_value(), "give UTF-8", "gave {} that is not UTF-8 at byte {}", what, byte.value_or(0));
    refuse_if(!is_clean(view), "leave out control characters, line breaks and marks of direction",
              "gave {} with characters that are not for people: {}", what, Quoted{view});
    return std::string(view);
}

std::string checked_name(const rf_text& text, std::string_view what) {
    std::string name = checked_text(text, what);
    refuse_if(name.empty(), "say it", "left {} empty", what);
    return name;
}

AnsweredFigure checked_value(const rf_figure* said, const Bibliography& sources) {
    const rf_figure figure = as_known(said, "value");
    AnsweredFigure value;
    value.name = checked_name(figure.name, "the name of a value");
    refuse_if(!ranges::contains(value_names, value.name), "use a name of the list in abi.h",
              "gave the value {}, which this program does not know", Quoted{value.name});
    const std::string whose = fmt::format("the value {}", value.name);
    refuse_if(figure.flags != 0, "set flags to 0 for a value", "gave {} with the flags {}", whose,
              figure.flags);
    const bool is_temperature = value.name.ends_with("_K");
    value.number =
        is_temperature ? checked_temperature(figure.number, whose) : checked_finite(figure.number, whose);
    refuse_if(value.number < 0, "give a figure that is not negative", "gave {} as {}", whose, value.number);
    check_rest(value, figure, whose, sources);
    return value;
}

AnsweredMethod checked_method(const rf_figure* said, const Bibliography& sources) {
    const rf_figure figure = as_known(said, "method");
    AnsweredMethod method;
    method.name = checked_name(figure.name, "the name of a method");
    const std::string whose = fmt::format("the method {}", in_quotes(method.name));
    refuse_if((figure.flags & ~known_flags) != 0, "use the flags of version 1 only",
              "gave {} with the flags {}, some of which this program does not know", whose, figure.flags);
    refuse_if(std::popcount(figure.flags & without_number) > 1,
              "set one of RF_NONE_NEEDED, RF_NO_FIGURE and RF_NOT_USABLE at most",
              "gave {} with flags that contradict each other", whose);
    method.flags = figure.flags;
    if (method.has_number())
        method.number = checked_temperature(figure.number, fmt::format("the minimum of {}", whose));
    check_rest(method, figure, whose, sources);
    refuse_if(method.is(RF_NOT_USABLE) && method.note.empty(), "say in the note why not",
              "gave {} as not usable without a note", whose);
    return method;
}

Advice checked_advice(const rf_text& kind, const rf_text& text, const rf_text& source,
                      const Bibliography& sources) {
    Advice advice;
    advice.kind = checked_name(kind, "the kind of an advice");
    refuse_if(!ranges::contains(advice_kinds, advice.kind), "use a kind of the list in abi.h",
              "gave advice of the kind {}, which this program does not know", in_quotes(advice.kind));
    const std::string whose = fmt::format("the advice on {}", advice.kind);
    advice.text = checked_name(text, fmt::format("the text of {}", whose));
    advice.source = checked_source(source, whose, sources);
    return advice;
}

} // namespace ringfill
