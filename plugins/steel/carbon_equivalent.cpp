#include "carbon_equivalent.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ringfill::steel {
namespace {

constexpr double residual_allowance = 0.03;

constexpr std::string_view ce_alloys[] = {"Cr", "Mo", "V", "Ni", "Cu"};
constexpr std::string_view ce_elements[] = {"C", "Mn", "Cr", "Mo", "V", "Ni", "Cu"};
constexpr std::string_view ce_plain_elements[] = {"C", "Mn"};
constexpr std::string_view pcm_elements[] = {"C", "Si", "Mn", "Cu", "Cr", "Ni", "Mo", "V", "B"};
constexpr std::string_view cet_elements[] = {"C", "Mn", "Mo", "Cr", "Cu", "Ni"};
constexpr std::string_view cen_elements[] = {"C", "Si", "Mn", "Cu", "Ni", "Cr", "Mo", "Nb", "V", "B"};
constexpr std::string_view cen_alloys[] = {"Si", "Cu", "Ni", "Cr", "Mo", "Nb", "V", "B"};

Figure ce_figure(const Composition& base) {
    if (residuals_unknown(base))
        return {
            "CE_IIW_pct",      ce_iiw(base),
            "C + Mn/6 + 0.03", inputs_of(base, ce_plain_elements),
            "IIW-CE",          "only C and Mn are stated, so 0.03 is added for the rest (EN 1011-2 C.2.1)"};
    return {"CE_IIW_pct",
            ce_iiw(base),
            "C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15",
            inputs_of(base, ce_elements),
            "IIW-CE",
            not_stated(base, "the base metal", ce_alloys)};
}

/// A figure that its limits reach is told as such: no one composition stands for all of them.
void take_reached(Figure& figure, std::optional<double> reached) {
    if (!reached || *reached == figure.number)
        return;
    figure.number = *reached;
    figure.formula.clear();
    figure.inputs = {{"reached", *reached, "%"}};
    figure.note = "the largest that a composition within the limits of its standard reaches";
}

std::vector<Figure> of_composition(const Composition& base) {
    return {
        ce_figure(base),
        {"Pcm_pct", pcm(base), "C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5*B",
         inputs_of(base, pcm_elements), "Ito-Bessyo", not_stated(base, "the base metal", pcm_alloys)},
        {"CET_pct", cet(base), "C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40", inputs_of(base, cet_elements),
         "SEW088", not_stated(base, "the base metal", cet_alloys)},
        {"CEN_pct", cen(base),
         "C + (0.75 + 0.25*tanh(20*(C - 0.12)))*(Si/24 + Mn/6 + Cu/15 + Ni/20 + (Cr + Mo + Nb + V)/5 + 5*B)",
         inputs_of(base, cen_elements), "Yurioka", not_stated(base, "the base metal", cen_alloys)}};
}

} // namespace

bool residuals_unknown(const Composition& metal) {
    return std::none_of(std::begin(ce_alloys), std::end(ce_alloys),
                        [&](std::string_view element) { return metal.states(element); });
}

double ce_iiw(const Composition& metal) {
    if (residuals_unknown(metal))
        return metal.pct("C") + metal.pct("Mn") / 6 + residual_allowance;
    return metal.pct("C") + metal.pct("Mn") / 6 + (metal.pct("Cr") + metal.pct("Mo") + metal.pct("V")) / 5 +
           (metal.pct("Ni") + metal.pct("Cu")) / 15;
}

double pcm(const Composition& metal) {
    return metal.pct("C") + metal.pct("Si") / 30 +
           (metal.pct("Mn") + metal.pct("Cu") + metal.pct("Cr")) / 20 + metal.pct("Ni") / 60 +
           metal.pct("Mo") / 15 + metal.pct("V") / 10 + 5 * metal.pct("B");
}

double cet(const Composition& metal) {
    return metal.pct("C") + (metal.pct("Mn") + metal.pct("Mo")) / 10 +
           (metal.pct("Cr") + metal.pct("Cu")) / 20 + metal.pct("Ni") / 40;
}

double cen_accommodation(double carbon_pct) {
    return 0.75 + 0.25 * std::tanh(20 * (carbon_pct - 0.12));
}

double cen(const Composition& metal) {
    return metal.pct("C") +
           cen_accommodation(metal.pct("C")) *
               (metal.pct("Si") / 24 + metal.pct("Mn") / 6 + metal.pct("Cu") / 15 + metal.pct("Ni") / 20 +
                (metal.pct("Cr") + metal.pct("Mo") + metal.pct("Nb") + metal.pct("V")) / 5 +
                5 * metal.pct("B"));
}

double ce_of(const Asked& asked) {
    return asked.reached_ce.value_or(ce_iiw(asked.base));
}

double cet_of(const Asked& asked) {
    return asked.reached_cet.value_or(cet(asked.base));
}

double pcm_of(const Asked& asked) {
    return asked.reached_pcm.value_or(pcm(asked.base));
}

std::vector<Figure> carbon_equivalents(const Asked& asked) {
    const Composition& base = asked.base;
    std::vector<Figure> all = of_composition(base);
    take_reached(all[0], asked.reached_ce);
    take_reached(all[1], asked.reached_pcm);
    take_reached(all[2], asked.reached_cet);
    return all;
}

} // namespace ringfill::steel
