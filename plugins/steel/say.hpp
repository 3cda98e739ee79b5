#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/material/abi.h>

namespace ringfill::steel {

/// What a formula is made of, in the unit the formula takes it in.
struct Input {
    std::string symbol;
    double value = 0;
    std::string unit; ///< empty: a plain number
};

/// A figure of an answer with how it was reached; abi.h says what each field means.
struct Figure {
    std::uint32_t flags = 0;
    std::string name;
    double number = 0;
    std::string formula;
    std::vector<Input> inputs;
    std::string source;
    std::string note;
};

/// Why a question cannot be answered: the name of the value at fault, or nothing, and what is wrong with it.
class Refusal : public std::runtime_error {
  public:
    Refusal(std::string where, const std::string& what)
        : std::runtime_error(what), where_(std::move(where)) {}
    const std::string& where() const { return where_; }

  private:
    std::string where_;
};

void say_value(const rf_sink& sink, const Figure& figure);
void say_method(const rf_sink& sink, const Figure& figure);
void say_advice(const rf_sink& sink, std::string_view kind, std::string_view text, std::string_view source);
void say_fault(const rf_sink& sink, std::string_view where, std::string_view what) noexcept;

/// Adds a part to a note, after a semicolon; an empty part adds nothing.
void add_note(std::string& note, std::string_view part);

/// A method that has no answer here, and why.
Figure not_usable(std::string name, std::string source, std::string why);

/// The hottest preheat that is one [°C]; hotter, the steel goes soft and austenitic under the torch. Common
/// practice, no source.
inline constexpr double hottest_preheat_degC = 700;

/// Puts a method's minimum in [°C]. One over `hottest_preheat_degC` becomes a preheat without a figure, since
/// no torch can follow it, and the note says what it was.
void set_minimum(Figure& method, double minimum_degC);

} // namespace ringfill::steel
