#pragma once

#include <string>
#include <vector>

namespace ringfill {

/// A value that goes into a formula: one number, or a list of them.
struct Input {
    std::string symbol;
    double value = 0; ///< of one number
    std::vector<double> list;
    std::string unit; ///< empty: a plain number
    bool is_list = false;

    Input(std::string name, double number, std::string unit_of_value = {})
        : symbol(std::move(name)), value(number), unit(std::move(unit_of_value)) {}
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

/// Puts workings behind others.
void append(std::vector<Working>& all, std::vector<Working> more);

/// Puts a path before the figures of workings: "bores[0]" and "bead.width_mm" give "bores[0].bead.width_mm".
std::vector<Working> under(const std::string& path, std::vector<Working> workings);

} // namespace ringfill
