#include <ringfill/caution/rules.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

/// A cooling time outside what the grade asks for, with the heat input that meets it.
void judge_cooling_time(CautionList& cautions, const BoreHeat& heat) {
    if (!heat.cooling || !heat.t85_window_s)
        return;
    const auto& [low, high] = heat.t85_window_s->value;
    const double t85 = heat.cooling->t85().value();
    if (t85 >= low && t85 <= high)
        return;
    cautions.before_by(
        heat.t85_window_s->source,
        "Weld with {:.2f} kJ/mm {}, within what the steel maker allows: it cools from 800 to 500 °C in "
        "{:.1f} s, and {:.3g} to {:.3g} s are asked for.",
        "{1}", kj_mm(heat_input_for(heat, t85 < low ? low : high)),
        t85 < low ? "or more, since it hardens cooling fast" : "or less, since it loses toughness", t85, low,
        high);
}

void judge_hardness(CautionList& cautions, const BoreHeat& heat) {
    if (!heat.hardness || !heat.hardness->is_over())
        return;
    cautions.before_by(
        heat.hardness->most_HV->source,
        "Expect about {:.0f} HV beside the weld (by {:.0f} HV more or less), over the {:.0f} HV of such "
        "steel: {}.",
        "the formula of Yurioka on the certificate; it is information, not a measurement",
        heat.hardness->vickers, hardness_spread_HV, heat.hardness->most_HV->value,
        heat.hardness->is_martensite ? "temper it, or lay a temper layer over its edge"
                                     : "more heat input or more preheat lowers it");
}

/// Metal that must be heat-treated goes there from the weld, never from the preheat to the boring bar.
void judge_heat_treatment(CautionList& cautions, const BoreHeat& heat) {
    if (heat.preheat.heat_treatment.empty())
        return;
    const HeatTreatment& newest = heat.preheat.heat_treatment.back();
    Caution& caution = cautions.add(When::after, Matter::quality,
                                    "Send it to heat treatment before it is bored: {:.0f} to {:.0f} °C by {} "
                                    "({}). The hours of boring here begin "
                                    "only after that; the heat view says what it must cool to before.",
                                    "it is not fit for service as welded", newest.degC.first,
                                    newest.degC.second, newest.document, newest.edition);
    caution.source = newest.source;
}

} // namespace

void cooling_rules(CautionList& cautions, const BoreHeat& heat) {
    judge_cooling_time(cautions, heat);
    judge_hardness(cautions, heat);
    judge_heat_treatment(cautions, heat);
    if (heat.quenched)
        cautions.before("Stay within the heat input that the maker of the steel allows.",
                        "it is quenched: too much heat takes its strength away");
}

} // namespace ringfill
