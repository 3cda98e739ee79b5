#pragma once

#include <concepts>
#include <initializer_list>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/units/metric.hpp>

namespace ringfill {

/// A number and the unit it is written in.
struct Amount {
    double value = 0;
    std::string unit; ///< empty: a plain number

    Amount(double number, std::string unit_of_number = {}) : value(number), unit(std::move(unit_of_number)) {}
    Amount(std::integral auto count) : value(static_cast<double>(count)) {}
};

struct Input;

/// Writes a quantity in a unit, alone or as the input with a symbol.
template <class Quantity>
struct AmountIn {
    double (*number)(Quantity);
    const char* unit;

    Amount operator()(Quantity quantity) const { return {number(quantity), unit}; }
    Input operator()(std::string symbol, Quantity quantity) const;
};

// Quantities as workings write them: {"t", in_seconds(arc)}.
inline constexpr AmountIn<Length> in_mm{mm, "mm"};
inline constexpr AmountIn<Length> in_metres{number_in_si, "m"};
inline constexpr AmountIn<Area> in_mm2{mm2, "mm2"};
inline constexpr AmountIn<Volume> in_mm3{mm3, "mm3"};
inline constexpr AmountIn<Mass> in_kg{number_in_si, "kg"};
inline constexpr AmountIn<Time> in_seconds{number_in_si, "s"};
inline constexpr AmountIn<LinearMass> in_kg_m{number_in_si, "kg/m"};
inline constexpr AmountIn<Density> in_kg_m3{number_in_si, "kg/m3"};
inline constexpr AmountIn<MassFlow> in_kg_h{kg_h, "kg/h"};
inline constexpr AmountIn<Speed> in_mm_min{mm_min, "mm/min"};
inline constexpr AmountIn<Speed> in_m_min{m_min, "m/min"};
inline constexpr AmountIn<Turning> in_rev_min{rev_min, "rev/min"};
inline constexpr AmountIn<Temperature> in_deg_c{deg_c, "degC"};
inline constexpr AmountIn<EnergyPerLength> in_kj_mm{kj_mm, "kJ/mm"};
inline constexpr AmountIn<Angle> in_degrees{degrees, "deg"};

/// A value that goes into a formula: one number, or a list of them.
struct Input {
    std::string symbol;
    double value = 0; ///< of one number
    std::vector<double> list;
    std::string unit; ///< empty: a plain number
    bool is_list = false;

    Input(std::string name, double number, std::string unit_of_value = {})
        : symbol(std::move(name)), value(number), unit(std::move(unit_of_value)) {}
    Input(std::string name, std::integral auto count) : Input(std::move(name), static_cast<double>(count)) {}
    Input(std::string name, Amount amount) : Input(std::move(name), amount.value, std::move(amount.unit)) {}
    Input(std::string name, std::vector<double> numbers, std::string unit_of_values = {})
        : symbol(std::move(name)), list(std::move(numbers)), unit(std::move(unit_of_values)), is_list(true) {}

    /// The list, or the one number as a list.
    std::vector<double> values() const { return is_list ? list : std::vector<double>{value}; }
};

template <class Quantity>
Input AmountIn<Quantity>::operator()(std::string symbol, Quantity quantity) const {
    return {std::move(symbol), number(quantity), unit};
}

/// Inputs in a row: inputs_of(in_mm("L", length), Input("eta", 0.95)).
template <class... One>
std::vector<Input> inputs_of(One... one) {
    std::vector<Input> all;
    all.reserve(sizeof...(one));
    (all.emplace_back(std::move(one)), ...); // a list in braces would be copied
    return all;
}

/// How a figure was reached, so that it can be checked by hand.
/// A formula is arithmetic (+ - * / ^ and brackets) with pi, sqrt, exp, log10, tanh, cos, sin, ceil, floor,
/// min, max, mod (remainder) and, of a list, sum, mean, highest and lowest; between lists of the same length
/// it is taken element by element.
struct Working {
    std::string figure; ///< the path of the figure in the result, such as bores[0].bead.width_mm
    std::string formula;
    std::vector<Input> inputs;
    double value = 0;
    std::string unit;   ///< of the value; empty: a plain number
    std::string source; ///< key of the bibliography
};

/// A working on one or two lines; "own" is the source of what the program works out itself.
Working worked(std::string figure, std::string formula, std::vector<Input> inputs, Amount value,
               std::string source = "own");

/// One of several figures that are worked out from the same inputs.
struct WorkedFigure {
    std::string_view figure;
    std::string_view formula; ///< empty: it is not told
    Amount value;
    std::string source = "own";
};

/// The workings of such figures: each takes the inputs that its formula names, in the order it names them,
/// from its own, then from those shared with others.
std::vector<Working> worked(const std::vector<Input>& own, std::initializer_list<WorkedFigure> figures,
                            const std::vector<Input>& shared = {});

/// A figure that is taken as it is: the formula is 1 times the input.
Working taken(std::string figure, Input input, std::string source = "own");

/// Moves values behind others.
template <class T>
void append(std::vector<T>& all, std::vector<T> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// Puts a path before the figures of workings: "bores[0]" and "bead.width_mm" give "bores[0].bead.width_mm".
std::vector<Working> under(const std::string& path, std::vector<Working> workings);

} // namespace ringfill
