#include "say.hpp"

#include <utility>

#include <fmt/format.h>

namespace ringfill::steel {
namespace {

constexpr double ice_point_K = 273.15;

rf_text text_of(std::string_view text) {
    return {text.data(), text.size()};
}

/// Hands a figure to one of the sink's functions; everything it points to lives until that returns.
void say(const rf_sink& sink, void (*give)(void*, const rf_figure*) noexcept, const Figure& figure) {
    std::vector<rf_input> inputs;
    for (const Input& input : figure.inputs)
        inputs.push_back({text_of(input.symbol), input.value, text_of(input.unit)});
    const rf_figure told{sizeof(rf_figure),       figure.flags,  text_of(figure.name), figure.number,
                         text_of(figure.formula), inputs.data(), inputs.size(),        text_of(figure.source),
                         text_of(figure.note)};
    give(sink.context, &told);
}

} // namespace

void say_value(const rf_sink& sink, const Figure& figure) {
    say(sink, sink.value, figure);
}

void say_method(const rf_sink& sink, const Figure& figure) {
    say(sink, sink.method, figure);
}

void say_advice(const rf_sink& sink, std::string_view kind, std::string_view text, std::string_view source) {
    sink.advice(sink.context, text_of(kind), text_of(text), text_of(source));
}

void say_fault(const rf_sink& sink, std::string_view where, std::string_view what) noexcept {
    sink.fault(sink.context, text_of(where), text_of(what));
}

void add_note(std::string& note, std::string_view part) {
    if (!note.empty() && !part.empty())
        note += "; ";
    note += part;
}

Figure not_usable(std::string name, std::string source, std::string why) {
    Figure figure;
    figure.flags = RF_NOT_USABLE;
    figure.name = std::move(name);
    figure.source = std::move(source);
    figure.note = std::move(why);
    return figure;
}

void set_minimum(Figure& method, double minimum_degC) {
    method.number = minimum_degC + ice_point_K;
    if (minimum_degC <= hottest_preheat_degC)
        return;
    method.flags |= RF_NO_FIGURE;
    add_note(method.note, fmt::format("its equation gives {:.0f} °C, which is no preheat", minimum_degC));
}

} // namespace ringfill::steel
