#include "method_b.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "carbon_equivalent.hpp"

namespace ringfill::steel {
namespace {

constexpr const char* method_b_name = "EN 1011-2 method B";
constexpr const char* method_b_source = "EN1011-2-B";

// Range of EN 1011-2:2001 C.3.2 (memory).
constexpr Range method_b_range[] = {{"C", 0, 0.32},  {"Si", 0, 0.8},  {"Mn", 0, 1.9},  {"Cr", 0, 1.5},
                                    {"Cu", 0, 0.7},  {"Mo", 0, 0.75}, {"Nb", 0, 0.06}, {"Ni", 0, 2.5},
                                    {"Ti", 0, 0.12}, {"V", 0, 0.18},  {"B", 0, 0.005}};
/// Outside these documents alone suffice where they say something.
constexpr Range alloy_range[] = {{"Cr", 0, 1.5}, {"Mo", 0, 0.75}, {"Ni", 0, 2.5}};
constexpr Range made_from[] = {{"C", 0.05, 100}, {"Mn", 0.5, 100}};
constexpr double least_cet = 0.20;
constexpr double most_cet = 0.50;
constexpr double thinnest_mm = 10;
constexpr double thickest_mm = 90;
constexpr double method_b_least_hydrogen = 1;
constexpr double most_hydrogen = 20;    // it runs on over this, marked
constexpr double hottest_hydrogen = 30; // and ends here
constexpr double least_heat_input = 0.5;
constexpr double most_heat_input = 4.0;
constexpr double most_yield_MPa = 1000;

/// The weld metal governs unless the base metal's CET is more by this (C.3, memory).
constexpr double weld_metal_lead = 0.03;

/// At 20 °C and below the metal needs no heat to be at its preheat (common practice, no source).
constexpr double none_up_to_degC = 20;

/// The CET that governs, and how it was chosen.
struct Governing {
    double cet = 0;
    std::string note;
};

Governing governing(const Asked& asked) {
    const double base = settled(cet_of(asked));
    std::string note = not_stated(asked.base, "the base metal", cet_alloys);
    if (!ferritic(asked.deposit)) {
        add_note(note, "the weld metal was not checked, it is not ferritic");
        return {base, note};
    }
    if (!asked.deposit.states("C") || !asked.deposit.states("Mn")) {
        add_note(note, "the weld metal was not checked, its composition is not known");
        return {base, note};
    }
    add_note(note, not_stated(asked.deposit, "the deposit", cet_alloys));
    const double weld = settled(cet(asked.deposit) + weld_metal_lead);
    if (base >= weld)
        return {base, note};
    add_note(note, fmt::format("the deposit governs, its CET of {} % with {} % on top",
                               show_pct(weld - weld_metal_lead), show_pct(weld_metal_lead)));
    return {weld, note};
}

/// The values that go into the equation, with what must be said of them.
struct Taken {
    double cet = 0;
    double wall_mm = 0;
    double hydrogen = 0;
    double heat_input = 0;
    std::string note;
};

void take_wall(Taken& taken, const Asked& asked) {
    taken.wall_mm = std::clamp(asked.wall_mm.value_or(thickest_mm), thinnest_mm, thickest_mm);
    if (!asked.wall_mm)
        add_note(taken.note, fmt::format("the wall is not known, taken as {} mm", taken.wall_mm));
    else if (*asked.wall_mm != taken.wall_mm)
        add_note(taken.note, fmt::format("the wall taken as {} mm", taken.wall_mm));
}

/// More hydrogen than it was made for never counts as less.
void take_hydrogen(Taken& taken, const Asked& asked) {
    taken.hydrogen = std::max(asked.hydrogen_ml_100g.value_or(hottest_hydrogen), method_b_least_hydrogen);
    if (!asked.hydrogen_ml_100g)
        add_note(taken.note, fmt::format("hydrogen is not known, taken as {} ml/100 g", hottest_hydrogen));
    else if (*asked.hydrogen_ml_100g > most_hydrogen)
        add_note(taken.note, fmt::format("hydrogen of {:.4g} ml/100 g is over the {} it was made for",
                                         *asked.hydrogen_ml_100g, most_hydrogen));
    else if (*asked.hydrogen_ml_100g < method_b_least_hydrogen)
        add_note(taken.note, fmt::format("hydrogen of {:.4g} ml/100 g is taken as {}",
                                         *asked.hydrogen_ml_100g, method_b_least_hydrogen));
}

/// More heat asks for less preheat; outside the range it counts at the nearest edge.
void take_heat_input(Taken& taken, const Asked& asked) {
    taken.heat_input =
        std::clamp(asked.heat_input_kJ_mm.value_or(least_heat_input), least_heat_input, most_heat_input);
    if (!asked.heat_input_kJ_mm)
        add_note(taken.note, fmt::format("heat input is not known, taken as {} kJ/mm", taken.heat_input));
    else if (*asked.heat_input_kJ_mm != taken.heat_input)
        add_note(taken.note, fmt::format("heat input of {:.3g} kJ/mm taken as {:.1f}",
                                         *asked.heat_input_kJ_mm, taken.heat_input));
}

Figure figure_of(std::uint32_t flags, const Taken& taken) {
    Figure figure;
    figure.flags = flags;
    figure.name = method_b_name;
    figure.formula = "697*CET + 160*tanh(d/35) + 62*HD^0.35 + (53*CET - 32)*Q - 328";
    figure.inputs = {{"CET", taken.cet, "%"},
                     {"d", taken.wall_mm, "mm"},
                     {"HD", taken.hydrogen, "ml/100 g"},
                     {"Q", taken.heat_input, "kJ/mm"}};
    figure.source = method_b_source;
    figure.note = taken.note;
    const double minimum = method_b_degC(taken.cet, taken.wall_mm, taken.hydrogen, taken.heat_input);
    set_minimum(figure, minimum);
    if (minimum <= none_up_to_degC)
        figure.flags |= RF_NONE_NEEDED;
    return figure;
}

std::string outside_wall(const Asked& asked) {
    if (asked.wall_mm && *asked.wall_mm > thickest_mm)
        return fmt::format("a wall of {:.4g} mm is over the {} mm it was made for", *asked.wall_mm,
                           thickest_mm);
    if (asked.wall_mm && *asked.wall_mm < thinnest_mm)
        return fmt::format("a wall of {:.4g} mm is under the {} mm it was made for", *asked.wall_mm,
                           thinnest_mm);
    return {};
}

} // namespace

double method_b_degC(double cet_pct, double wall_mm, double hydrogen_ml_100g, double heat_input_kJ_mm) {
    return 697 * cet_pct + 160 * std::tanh(wall_mm / 35) + 62 * std::pow(hydrogen_ml_100g, 0.35) +
           (53 * cet_pct - 32) * heat_input_kJ_mm - 328;
}

Figure method_b(const Asked& asked) {
    if (const std::string why = why_not_usable(asked.base); !why.empty())
        return not_usable(method_b_name, method_b_source, why);
    Governing chosen = governing(asked);
    Taken taken;
    for (const std::string& part : outside(asked.base, method_b_range))
        add_note(taken.note, part);
    std::uint32_t flags = taken.note.empty() ? 0 : RF_OUT_OF_COMPOSITION | RF_AT_EDGE;
    if (!outside(asked.base, alloy_range).empty())
        flags |= RF_SECOND_OPINION;
    // Softer metal than it was made for asks for no more than the softest, so it stays within.
    for (const std::string& part : outside(asked.base, made_from))
        add_note(taken.note, part);
    taken.cet = std::clamp(chosen.cet, least_cet, most_cet);
    if (chosen.cet > most_cet)
        flags |= RF_AT_EDGE;
    if (settled(cet_of(asked)) > most_cet)
        flags |= RF_OUT_OF_COMPOSITION;
    if (chosen.cet != taken.cet)
        add_note(taken.note, fmt::format("CET of {} % is taken as the {} % it {} at", show_pct(chosen.cet),
                                         show_pct(taken.cet), chosen.cet < least_cet ? "begins" : "ends"));
    if (const std::string out = outside_wall(asked); !out.empty()) {
        flags |= RF_OUT_OF_THICKNESS | RF_AT_EDGE;
        add_note(taken.note, out);
    }
    add_note(taken.note, chosen.note);
    if (asked.yield_MPa && *asked.yield_MPa > most_yield_MPa)
        add_note(taken.note, fmt::format("a yield strength of {:.4g} MPa is over the {} MPa it was made for",
                                         *asked.yield_MPa, most_yield_MPa));
    take_wall(taken, asked);
    take_hydrogen(taken, asked);
    take_heat_input(taken, asked);
    Figure figure = figure_of(flags, taken);
    if (taken.hydrogen > hottest_hydrogen) {
        figure.flags = (figure.flags & ~RF_NONE_NEEDED) | RF_NO_FIGURE;
        add_note(figure.note,
                 fmt::format("over {} ml/100 g it gives no figure: take another filler", hottest_hydrogen));
    }
    return figure;
}

} // namespace ringfill::steel
