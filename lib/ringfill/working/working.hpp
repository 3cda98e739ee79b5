#pragma once

#include <concepts>
#include <string>
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

// Quantities as workings write them: {"t", in_seconds(arc)}.
inline Amount in_mm(Length length) {
    return {mm(length), "mm"};
}
inline Amount in_metres(Length length) {
    return {length.value(), "m"};
}
inline Amount in_mm2(Area area) {
    return {mm2(area), "mm2"};
}
inline Amount in_mm3(Volume volume) {
    return {mm3(volume), "mm3"};
}
inline Amount in_litres(Volume volume) {
    return {litres(volume), "L"};
}
inline Amount in_kg(Mass mass) {
    return {mass.value(), "kg"};
}
inline Amount in_seconds(Time time) {
    return {time.value(), "s"};
}
inline Amount in_kg_m(LinearMass mass) {
    return {mass.value(), "kg/m"};
}
inline Amount in_kg_m3(Density density) {
    return {density.value(), "kg/m3"};
}
inline Amount in_kg_h(MassFlow flow) {
    return {kg_h(flow), "kg/h"};
}
inline Amount in_mm_min(Speed speed) {
    return {mm_min(speed), "mm/min"};
}
inline Amount in_m_min(Speed speed) {
    return {m_min(speed), "m/min"};
}
inline Amount in_rev_min(Turning turning) {
    return {rev_min(turning), "rev/min"};
}
inline Amount in_deg_c(Temperature temperature) {
    return {deg_c(temperature), "degC"};
}
inline Amount in_kj_mm(EnergyPerLength energy) {
    return {kj_mm(energy), "kJ/mm"};
}
inline Amount in_degrees(Angle angle) {
    return {degrees(angle), "deg"};
}

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
    std::string figure;
    std::string formula; ///< empty: it is not told
    Amount value;
    std::string source = "own";
};

/// The workings of such figures: each takes the inputs that its formula names, in the order it names them.
std::vector<Working> worked(const std::vector<Input>& inputs, std::vector<WorkedFigure> figures);

/// A figure that is taken as it is: the formula is 1 times the input.
Working taken(std::string figure, Input input, std::string source = "own");

/// Puts workings behind others.
void append(std::vector<Working>& all, std::vector<Working> more);

/// Puts a path before the figures of workings: "bores[0]" and "bead.width_mm" give "bores[0].bead.width_mm".
std::vector<Working> under(const std::string& path, std::vector<Working> workings);

} // namespace ringfill
