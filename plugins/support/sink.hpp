#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/material/abi.h>

namespace ringfill::family {

/// What a formula is made of, in the unit the formula takes it in.
struct Input {
    std::string symbol;
    double value = 0;
    std::string unit = {}; ///< empty: a plain number
};

/// A figure with how it was reached; abi.h says what each field means.
struct Figure {
    std::string name;
    double number = 0;
    std::string formula = {};
    std::vector<Input> inputs = {};
    std::string source;
    std::string note = {};
    std::uint32_t flags = 0; ///< of a method: RF_AT_EDGE and so on
};

/// Speaks to the program. It copies what it is given before it returns, so temporaries are fine.
class Sink {
  public:
    explicit Sink(const rf_sink& sink) : sink_(sink) {}

    void value(const Figure& figure) const { say(sink_.value, figure); }
    void method(const Figure& figure) const { say(sink_.method, figure); }
    void advice(std::string_view kind, std::string_view text, std::string_view source) const {
        sink_.advice(sink_.context, as_text(kind), as_text(text), as_text(source));
    }
    void fault(std::string_view where, std::string_view what) const noexcept {
        sink_.fault(sink_.context, as_text(where), as_text(what));
    }

  private:
    using Say = void (*)(void*, const rf_figure*) noexcept;

    static rf_text as_text(std::string_view text) noexcept { return {text.data(), text.size()}; }

    void say(Say to, const Figure& figure) const {
        std::vector<rf_input> inputs;
        for (const Input& input : figure.inputs)
            inputs.push_back({as_text(input.symbol), input.value, as_text(input.unit)});
        rf_figure said = {};
        said.size = sizeof said;
        said.flags = figure.flags;
        said.name = as_text(figure.name);
        said.number = figure.number;
        said.formula = as_text(figure.formula);
        said.inputs = inputs.data();
        said.input_count = inputs.size();
        said.source = as_text(figure.source);
        said.note = as_text(figure.note);
        to(sink_.context, &said);
    }

    const rf_sink& sink_;
};

} // namespace ringfill::family
