#include "table_c1.hpp"

#include <limits>
#include <string>

#include <fmt/format.h>

#include "carbon_equivalent.hpp"

namespace ringfill::steel {
namespace {

constexpr const char* table_c1_name = "EN 1011-2 method A, Table C.1";
constexpr const char* table_c1_source = "EN1011-2-C1";

// Range of method A, EN 1011-2:2001 C.2.1 (memory). Less than its 0.05 % C asks for no more.
constexpr Range table_c1_range[] = {{"C", 0, 0.25}, {"Si", 0, 0.8}, {"Mn", 0, 1.7},  {"Cr", 0, 0.9},
                                    {"Cu", 0, 1.0}, {"Ni", 0, 2.5}, {"Mo", 0, 0.75}, {"V", 0, 0.20}};

/// The printed columns: two carbon equivalents, each at two heat inputs.
constexpr double lower_ce = 0.43;
constexpr double upper_ce = 0.49;
constexpr double lower_heat_input = 1.0;
constexpr double upper_heat_input = 2.0;

/// One printed row: hydrogen up to a limit, and the thickest combination without preheat in each column.
struct Row {
    double hydrogen_up_to;
    const char* scale;
    double ce49_q1;
    double ce49_q2;
    double ce43_q1;
    double ce43_q2;
};

constexpr Row rows[] = {{3, "up to 3", 60, 100, 100, 100},
                        {5, "over 3 to 5", 50, 100, 100, 100},
                        {10, "over 5 to 10", 35, 65, 60, 100},
                        {15, "over 10 to 15", 30, 55, 50, 90},
                        {std::numeric_limits<double>::infinity(), "over 15", 25, 50, 40, 80}};

/// What an unknown thickness is taken as: more has no effect (the table ends here).
constexpr double table_c1_thickest_mm = 100;

const Row& row_of(double hydrogen) {
    const Row* row = rows;
    while (hydrogen > row->hydrogen_up_to)
        ++row;
    return *row;
}

/// Why the table has no answer for a metal and a heat input, or nothing.
std::string why_not(const Asked& asked) {
    if (std::string why = why_not_usable(asked.base); !why.empty())
        return why;
    std::string why;
    for (const std::string& part : outside(asked.base, table_c1_range))
        add_note(why, part);
    if (const double ce = settled(ce_of(asked)); ce > upper_ce)
        add_note(why, fmt::format("CE(IIW) {} % is over its last column of {} %", show_pct(ce),
                                  show_pct(upper_ce)));
    if (!asked.heat_input_kJ_mm)
        add_note(why, "heat input is not known");
    else if (*asked.heat_input_kJ_mm < lower_heat_input)
        add_note(why, fmt::format("heat input of {:.3g} kJ/mm is under its first column of {:.1f} kJ/mm",
                                  *asked.heat_input_kJ_mm, lower_heat_input));
    return why;
}

} // namespace

std::optional<double> table_c1_mm(double ce_pct, double hydrogen_ml_100g, double heat_input_kJ_mm) {
    if (!(ce_pct <= upper_ce && heat_input_kJ_mm >= lower_heat_input))
        return std::nullopt;
    const Row& row = row_of(hydrogen_ml_100g);
    const bool more_heat = heat_input_kJ_mm >= upper_heat_input;
    if (ce_pct <= lower_ce)
        return more_heat ? row.ce43_q2 : row.ce43_q1;
    return more_heat ? row.ce49_q2 : row.ce49_q1;
}

Figure table_c1(const Asked& asked) {
    if (const std::string why = why_not(asked); !why.empty()) {
        Figure none = not_usable(table_c1_name, table_c1_source, why);
        none.flags |= RF_SECOND_OPINION;
        return none;
    }
    const double ce = settled(ce_of(asked));
    const double hydrogen = asked.hydrogen_ml_100g.value_or(std::numeric_limits<double>::infinity());
    const double combined = asked.combined_mm.value_or(table_c1_thickest_mm);
    const double heat_input = *asked.heat_input_kJ_mm;
    const double limit = table_c1_mm(ce, hydrogen, heat_input).value();
    Figure figure;
    figure.flags = RF_SECOND_OPINION | (combined <= limit ? RF_NONE_NEEDED : RF_NO_FIGURE);
    figure.name = table_c1_name;
    figure.inputs = {{"CE", ce, "%"}, {"Q", heat_input, "kJ/mm"}, {"combined", combined, "mm"}};
    if (asked.hydrogen_ml_100g)
        figure.inputs.push_back({"HD", hydrogen, "ml/100 g"});
    figure.source = table_c1_source;
    figure.note = fmt::format("read at {} %, {:.1f} kJ/mm and {} ml/100 g: none up to a combined thickness "
                              "of {} mm, here {:.4g} mm",
                              show_pct(ce <= lower_ce ? lower_ce : upper_ce),
                              heat_input >= upper_heat_input ? upper_heat_input : lower_heat_input,
                              row_of(hydrogen).scale, limit, combined);
    if (!asked.combined_mm)
        add_note(figure.note,
                 fmt::format("the combined thickness is not known, taken as {} mm", table_c1_thickest_mm));
    if (!asked.hydrogen_ml_100g)
        add_note(figure.note, "hydrogen is not known");
    return figure;
}

} // namespace ringfill::steel
