#include "seferian.hpp"

#include <cmath>

#include <fmt/format.h>

namespace ringfill::steel {
namespace {

constexpr const char* seferian_name = "Séférian";
constexpr const char* seferian_source = "Seferian";
constexpr Range seferian_range[] = {{"C", 0.1, 0.6}};
constexpr double none_up_to_pct = 0.25;
constexpr double seferian_unknown_wall_mm = 90;
constexpr std::string_view alloys[] = {"Cr", "Ni", "Mo"};
constexpr std::string_view all_alloys[] = {"Mn", "Cr", "Ni", "Mo"};
constexpr double seferian_most_alloy_pct = 5;
constexpr double lean_carbon_pct = 0.25; // up to it the rule asks structural steel for too much

Figure no_answer(const std::string& why) {
    Figure figure = not_usable(seferian_name, seferian_source, why);
    figure.flags |= RF_SECOND_OPINION;
    return figure;
}

} // namespace

double chemical_carbon(const Composition& metal) {
    return metal.pct("C") + (metal.pct("Mn") + metal.pct("Cr")) / 9 + metal.pct("Ni") / 18 +
           7 * metal.pct("Mo") / 90;
}

double seferian_carbon(double chemical_carbon_pct, double thickness_mm) {
    return chemical_carbon_pct * (1 + 0.005 * thickness_mm);
}

Figure seferian(const Asked& asked) {
    if (const std::string why = why_not_usable(asked.base); !why.empty())
        return no_answer(why);
    if (const auto out = outside(asked.base, seferian_range); !out.empty())
        return no_answer(out.front());
    double alloy = 0;
    for (const std::string_view element : all_alloys)
        alloy += asked.base.pct(element);
    if (alloy > seferian_most_alloy_pct)
        return no_answer(fmt::format("{} % of alloy is over the {} % it was made for", show_pct(alloy),
                                     seferian_most_alloy_pct));
    const double wall = asked.wall_mm.value_or(seferian_unknown_wall_mm);
    const double chemical = asked.reached_chemical_carbon.value_or(chemical_carbon(asked.base));
    const double carbon = settled(seferian_carbon(chemical, wall));
    Figure figure;
    figure.flags = RF_SECOND_OPINION;
    figure.name = seferian_name;
    figure.source = seferian_source;
    figure.note = not_stated(asked.base, "the base metal", alloys);
    if (asked.base.pct("C") <= lean_carbon_pct) {
        figure.flags |= RF_OUT_OF_COMPOSITION;
        add_note(figure.note,
                 fmt::format("told only, since the metal holds no more than {} % C", lean_carbon_pct));
    }
    if (!asked.wall_mm)
        add_note(figure.note, fmt::format("the wall is not known, taken as {} mm", seferian_unknown_wall_mm));
    figure.formula = "350*sqrt(max(C_c*(1 + 0.005*e) - 0.25, 0))";
    figure.inputs = {{"C_c", chemical, "%"}, {"e", wall, "mm"}};
    if (carbon <= none_up_to_pct) {
        figure.flags |= RF_NONE_NEEDED;
        return figure;
    }
    set_minimum(figure, 350 * std::sqrt(seferian_carbon(chemical, wall) - none_up_to_pct));
    return figure;
}

} // namespace ringfill::steel
