#include <ringfill/material/to_the_bit.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

/// Texts of an answer hold no control character, so one parts them.
void add(std::string& text, const std::string& part) {
    text += part;
    text += '\x1F';
}

void add(std::string& text, double number) {
    add(text, fmt::format("{:a}", number));
}

void add_figure(std::string& text, const AnsweredFigure& figure) {
    add(text, figure.name);
    add(text, figure.number);
    add(text, figure.formula);
    for (const Input& input : figure.inputs) {
        add(text, input.symbol);
        for (const double value : input.values())
            add(text, value);
        add(text, input.unit);
    }
    add(text, figure.source);
    add(text, figure.note);
}

} // namespace

std::string to_the_bit(const FamilyAnswer& answer) {
    std::string text = answer.supported ? "supported" : "unsupported";
    for (const AnsweredFigure& value : answer.values) {
        add(text, "value");
        add_figure(text, value);
    }
    for (const AnsweredMethod& method : answer.methods) {
        add(text, "method");
        for (const bool flag :
             {method.out_of_composition, method.out_of_thickness, method.at_edge, method.none_needed,
              method.no_figure, method.second_opinion, method.not_usable})
            text += flag ? '1' : '0';
        add_figure(text, method);
    }
    for (const Advice& advice : answer.advice) {
        add(text, "advice");
        add(text, advice.kind);
        add(text, advice.text);
        add(text, advice.source);
    }
    return text;
}

} // namespace ringfill
