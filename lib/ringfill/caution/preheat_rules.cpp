#include <ringfill/caution/rules.hpp>
#include <ringfill/heat/identity.hpp>

namespace ringfill {
namespace {

/// A filler whose own range goes far over what counts of it: how hot it is laid is for somebody qualified,
/// and the metal under it may not bear it.
void judge_filler_range(CautionList& cautions, const RuledBore& on) {
    const Preheat& preheat = on.plan.heat.preheat;
    if (!preheat.filler_range || !preheat.approved.empty())
        return;
    const auto& [low, high, counted, source] = *preheat.filler_range;
    Caution& caution = cautions.before("Have the preheat settled by an approved procedure: the metal of {} "
                                       "is laid at {} to {}, of which {} counts here",
                                       "how hot within that range hangs on the wall and on how hard it is",
                                       on.procedure().filler, show_exact(low, on.units),
                                       show_exact(high, on.units), show_exact(counted, on.units));
    if (const auto& most = preheat.interpass_max; most && most->value < high) {
        caution.text += "; the metal under it must not pass " + show_exact(most->value, on.units);
        caution.because = fmt::format("the rest of that range would soften {}: {}", on.bore.base, most->by);
    }
    caution.text += '.';
    caution.source = source;
}

/// The method that asks for the most over what rules, of those that are marked as `applies`.
const PreheatMethod* most_over(const Preheat& preheat, bool applies, double margin_K) {
    const PreheatMethod* most = nullptr;
    for (const PreheatMethod& method : preheat.methods)
        if (method.applies == applies && method.minimum && preheat.minimum &&
            method.minimum->value() > preheat.minimum->value.value() + margin_K &&
            (!most || *method.minimum > *most->minimum))
            most = &method;
    return most;
}

/// Methods that ask for more than what rules, with a figure.
void judge_rivals(CautionList& cautions, const BoreHeat& heat) {
    const Preheat& preheat = heat.preheat;
    const auto least_of = [&](Temperature minimum) { return show_minimum(minimum, cautions.units); };
    const PreheatMethod* over = most_over(preheat, true, 1e-6);
    if (over)
        cautions.before_by(over->source,
                           "The approved procedure {} rules with {}, yet {} asks for {}: ask its author "
                           "before the first arc.",
                           "a method that applies asks for more than the approved procedure",
                           preheat.approved, least_of(preheat.minimum->value), over->name,
                           least_of(*over->minimum));
    const PreheatMethod* more = most_over(preheat, false, much_more_K);
    if (!more)
        return;
    if (!why_not_for_filler(heat.structure).empty()) // metal of its own practice is spared
        cautions.before_by(more->source,
                           "Do not heat this metal for its filler: {} is {}{}. Take another filler, or have "
                           "an approved procedure settle the two.",
                           "{3}", more->name,
                           more->range_from ? show_exact(*more->range_from, cautions.units) + " to " : "",
                           show_exact(*more->minimum, cautions.units), more->note);
    else if (!(over && *over->minimum >= *more->minimum)) // else that one says it already
        cautions.before_by(more->source,
                           "{} asks for {}, much more than the {} that rule: have the procedure settled by "
                           "somebody qualified.",
                           "{3}", more->name, least_of(*more->minimum), least_of(preheat.minimum->value),
                           more->in_range
                               ? "a second opinion, which does not rule"
                               : "it is outside the range it was made for; the heat view says how");
}

/// Methods that ask for preheat without a figure.
void judge_unnamed(CautionList& cautions, const Preheat& preheat) {
    for (const PreheatMethod& method : preheat.methods)
        if (method.asks == Asks::unnamed && !method.applies)
            cautions.before_by(
                method.source,
                "Have the metal judged by somebody qualified: {} asks for more than any flame should give.",
                "{1}", method.name, method.note);
        else if (method.asks == Asks::unnamed && preheat.asked == PreheatState::needed_without_figure)
            cautions.before_by(method.source,
                               "Do not go without preheat: {} asks for it and gives no figure.", "{1}",
                               method.name, method.note.empty() ? "it applies here" : method.note);
}

void judge_metal(CautionList& cautions, const WornBore& bore, const BoreHeat& heat) {
    if (heat.unknown_metal && !bore.magnetic)
        cautions.before(
            "Try a magnet before any heat. Where it does not hold firmly, do not heat: identify the metal "
            "first. Where it does, that is no leave to heat: it holds on cast iron as well.",
            "the metal is unknown and the job does not say whether a magnet holds");
    if (heat.unknown_metal)
        cautions.before("Have the metal judged before any heat: file, chip or spark test to tell steel from "
                        "cast iron, on which the figures here do not hold; then hardness, and a chip for "
                        "chemistry. Until then it counts as 4140.",
                        "the metal is unknown, and a magnet holds on steel and on cast iron");
    if (heat.not_the_grade && heat.unknown_metal)
        cautions.before("Ask what the metal is: its certificate shows more than 4140, which unknown metal "
                        "counts as. The rules count beside the rows.",
                        "{}", *heat.not_the_grade);
    else if (heat.not_the_grade)
        cautions.before("Ask what the metal is: its certificate is not of {1}. The rows of that grade count "
                        "as the least, beside the row for unknown steel.",
                        "{0}", *heat.not_the_grade, bore.base);
    if (heat.dirty_steel)
        cautions.before("Expect cracks in the hot weld: lay a trial ring and check it with dye penetrant "
                        "before you go on.",
                        "{}", *heat.dirty_steel);
    if (heat.stainless_on_steel)
        cautions.before("Let the first layer melt as little of the steel as can be: mixed into the stainless "
                        "filler it makes it brittle.",
                        "a stainless filler on steel");
}

void judge_what_is_missing(CautionList& cautions, const Procedure& procedure, const BoreHeat& heat) {
    if (!heat.wall)
        cautions.before("Measure the boss: preheat is taken for the thickest wall, with high restraint.",
                        "the job gives neither boss_diameter nor heat_wall");
    // Steel that is preheated hardens; the classes of hydrogen are those of ferritic fillers.
    const bool hardens =
        heat.ferritic_filler && heat.preheat.minimum && heat.preheat.minimum->value > chill_off;
    if (!heat.hydrogen_ml_100g)
        cautions.before_by(
            "EN1011-2-B",
            "Find the hydrogen class of {} on its certificate: without it the highest is taken, 20 ml/100 g, "
            "and no row made for less rules alone.{}",
            "neither its designation nor the job names one", procedure.filler,
            hardens
                ? " Where it names none take one of low hydrogen, of class H4, H5 or H8: this metal hardens."
                : "");
    if (heat.structure == "ferritic" && heat.laid.empty())
        cautions.before_by("EN1011-2-B",
                           "Write current and voltage into the job: preheat is taken for the heat input that "
                           "asks for the most.",
                           "the heat input is not known{}",
                           procedure.approved && procedure.approved->heat_input
                               ? ", nor whether it lies in the approved band"
                               : "");
}

} // namespace

void preheat_rules(CautionList& cautions, const RuledBore& on) {
    const BoreHeat& heat = on.plan.heat;
    if (heat.preheat.doubt)
        return;
    judge_metal(cautions, on.bore, heat);
    judge_rivals(cautions, heat);
    judge_unnamed(cautions, heat.preheat);
    judge_filler_range(cautions, on);
    overruled_rules(cautions, on);
    if (heat.structure == "ferritic" || heat.structure == "martensitic")
        judge_what_is_missing(cautions, on.procedure(), heat);
    const auto& wall = on.plan.build.wall;
    if (on.bore.heat_wall && wall && *on.bore.heat_wall < *wall)
        cautions.before_by("own", "Check heat_wall: preheat is taken for less than the wall.",
                           "heat_wall is {}, the wall after the skim {}", *on.bore.heat_wall, *wall);
}

} // namespace ringfill
