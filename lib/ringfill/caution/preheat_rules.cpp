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

/// The method that asks for the most over what rules, of those that are wanted.
template <class Wanted>
const PreheatMethod* most_over(const Preheat& preheat, double margin_K, Wanted wanted) {
    const PreheatMethod* most = nullptr;
    for (const PreheatMethod& method : preheat.methods)
        if (method.counts && preheat.minimum && wanted(method) &&
            method.counts->value() > preheat.minimum->value.value() + margin_K &&
            (!most || *method.counts > *most->counts))
            most = &method;
    return most;
}

/// Methods that ask for more than what rules, with a figure. A second opinion counts within its own range,
/// worked out from what a certificate says, for a wall that is known.
void judge_rivals(CautionList& cautions, const BoreHeat& heat) {
    const Preheat& preheat = heat.preheat;
    const auto exact = [&](Temperature minimum) { return show_exact(minimum, cautions.units); };
    const PreheatMethod* over = most_over(preheat, 1e-6, [](const auto& method) { return method.applies; });
    if (over)
        cautions.before_by(over->source,
                           "The approved procedure {} rules with {}, yet {} asks for {}: ask its author "
                           "before the first arc.",
                           "a method that applies asks for more than the approved procedure",
                           preheat.approved, exact(preheat.minimum->value), over->name, exact(*over->counts));
    if (!why_not_for_filler(heat.structure).empty()) { // metal of its own practice is spared
        if (const PreheatMethod* more =
                most_over(preheat, much_more_thick_K, [](const auto& method) { return !method.applies; }))
            cautions.before_by(
                more->source,
                "Do not heat this metal for its filler: {} is {}{}. Take another filler, or have "
                "an approved procedure settle the two.",
                "{3}", more->name, more->range_from ? exact(*more->range_from) + " to " : "",
                exact(*more->counts), more->note);
        return;
    }
    if (!heat.certified || !heat.wall)
        return;
    const double margin_K = *heat.wall > rigid_wall ? much_more_thick_K : much_more_K;
    const PreheatMethod* more = most_over(preheat, margin_K, [](const auto& method) {
        return !method.applies && method.second_opinion && method.in_range;
    });
    if (more && !(over && *over->counts >= *more->counts)) // else that one says it already
        cautions.before_by(
            more->source,
            "{} asks for {}, much more than the {} of {} that rule: have the procedure settled by "
            "somebody qualified.",
            "a second opinion, which does not rule", more->name, exact(*more->counts),
            exact(preheat.minimum->value), preheat.minimum->by);
}

/// What the job says of whose rules it goes by, and what its window leaves.
void judge_rules(CautionList& cautions, const RuledBore& on) {
    const Preheat& preheat = on.plan.heat.preheat;
    if (preheat.unlisted_rules)
        cautions.before(
            "Ask whose rules hold: {} does not name {} in a list of its own, so it does not rule here.",
            "welding_rules of the job names it; {2} rules instead", preheat.welding_rules, on.bore.base,
            preheat.minimum ? preheat.minimum->by : "nothing");
    if (preheat.narrow)
        cautions.before(
            "Read the temperature with a contact thermometer before every ring: the window is narrow.",
            "minimum and maximum lie under {} K apart", narrow_window_K);
    if (preheat.interpass_max && preheat.interpass_max->gave_way)
        cautions.before(
            "Expect a hotter boss than usual: the maximum between rings gives way to the preheat.",
            "it is common practice alone, {}", preheat.interpass_max->by);
    if (on.plan.heat.cap_assumes_year)
        cautions.before(
            "Ask when the metal was bought, and write it into bought_after: what it may hold is taken "
            "from the present edition of its standard.",
            "older metal of its name has no cap on its carbon equivalent");
    if (on.plan.heat.structure == "cast_iron" && preheat.minimum && preheat.minimum->value > chill_off &&
        !on.bore.part_mass)
        cautions.before(
            "Heat the whole casting, evenly and no faster than 60 K/h: time and fuel here are those of the "
            "boss alone, the least that it takes. Write its mass into part_mass.",
            "iron that is hotter in one place than in another cracks");
    if (preheat.later)
        cautions.before(
            "Keep two limits apart: the first layer has the preheat of the metal under it, the others "
            "those of the filler; wait between the two.",
            "a filler of another kind than the steel under it");
}

/// Methods that ask for preheat without a figure.
void judge_unnamed(CautionList& cautions, const Preheat& preheat) {
    for (const PreheatMethod& method : preheat.methods)
        if (method.asks == Asks::unnamed && method.applies &&
            preheat.asked == PreheatState::needed_without_figure)
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
    if (heat.not_the_grade)
        cautions.before(
            "Ask what the metal is: its certificate is not of {1}. The higher of what that grade asks for "
            "and of method B on the certificate holds.",
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

/// From over this much a filler is no low-hydrogen one [ml/100 g; AWS A4.3 H16].
constexpr double wet_ml_100g = 16;

void judge_what_is_missing(CautionList& cautions, const Procedure& procedure, const BoreHeat& heat) {
    if (!heat.wall)
        cautions.before("Measure the boss: preheat is taken for the thickest wall, with high restraint.",
                        "the job gives neither boss_diameter nor heat_wall");
    // Steel that is preheated hardens; the classes of hydrogen are those of ferritic fillers.
    const bool hardens =
        heat.ferritic_filler && heat.preheat.minimum && heat.preheat.minimum->value > chill_off;
    if (heat.hydrogen_is_assumed)
        cautions.before_by(
            "EN1011-2-B",
            "Say which hydrogen class {} has, or use a low-hydrogen one: without it 30 ml/100 g are taken.{}",
            "neither its designation nor the job names one", procedure.filler,
            hardens ? " This metal hardens: of class H4, H5 or H8 is what it asks for." : "");
    else if (hardens && heat.hydrogen_ml_100g->value > wet_ml_100g)
        cautions.before_by("EN1011-2-B", "Use a low-hydrogen filler first: {} brings up to {:.3g} ml/100 g.",
                           "hydrogen cracks metal that hardens, and every ml/100 g asks for more preheat",
                           procedure.filler, heat.hydrogen_ml_100g->value);
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
    judge_rules(cautions, on);
    judge_filler_range(cautions, on);
    overruled_rules(cautions, on);
    cooling_rules(cautions, heat);
    if (heat.structure == "ferritic" || heat.structure == "martensitic")
        judge_what_is_missing(cautions, on.procedure(), heat);
    const auto& wall = on.plan.build.wall;
    if (on.bore.heat_wall && wall && *on.bore.heat_wall < *wall)
        cautions.before_by("own", "Check heat_wall: preheat is taken for less than the wall.",
                           "heat_wall is {}, the wall after the skim {}", *on.bore.heat_wall, *wall);
}

} // namespace ringfill
