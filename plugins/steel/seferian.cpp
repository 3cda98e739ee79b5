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
constexpr std::string_view elements[] = {"C", "Mn", "Cr", "Ni", "Mo"};
constexpr std::string_view alloys[] = {"Cr", "Ni", "Mo"};

Figure no_answer(const std::string& why) {
    Figure figure = not_usable(seferian_name, seferian_source, why);
    figure.flags |= RF_SECOND_OPINION;
    return figure;
}

} // namespace

double seferian_carbon(const Composition& metal, double thickness_mm) {
    const double chemical = metal.pct("C") + (metal.pct("Mn") + metal.pct("Cr")) / 9 + metal.pct("Ni") / 18 +
                            7 * metal.pct("Mo") / 90;
    return chemical * (1 + 0.005 * thickness_mm);
}

Figure seferian(const Asked& asked) {
    if (const std::string why = why_not_usable(asked.base); !why.empty())
        return no_answer(why);
    if (const auto out = outside(asked.base, seferian_range); !out.empty())
        return no_answer(out.front());
    const double wall = asked.wall_mm.value_or(seferian_unknown_wall_mm);
    const double carbon = settled(seferian_carbon(asked.base, wall));
    Figure figure;
    figure.flags = RF_SECOND_OPINION;
    figure.name = seferian_name;
    figure.source = seferian_source;
    figure.note = not_stated(asked.base, "the base metal", alloys);
    if (!asked.wall_mm)
        add_note(figure.note, fmt::format("the wall is not known, taken as {} mm", seferian_unknown_wall_mm));
    figure.formula = "350*sqrt(max((C + (Mn + Cr)/9 + Ni/18 + 7*Mo/90)*(1 + 0.005*e) - 0.25, 0))";
    figure.inputs = inputs_of(asked.base, elements);
    figure.inputs.push_back({"e", wall, "mm"});
    if (carbon <= none_up_to_pct) {
        figure.flags |= RF_NONE_NEEDED;
        return figure;
    }
    set_minimum(figure, 350 * std::sqrt(seferian_carbon(asked.base, wall) - none_up_to_pct));
    return figure;
}

} // namespace ringfill::steel
