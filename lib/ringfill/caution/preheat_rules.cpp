#include <utility>

#include <fmt/format.h>

#include <ringfill/caution/heat_rules.hpp>
#include <ringfill/heat/identity.hpp>

namespace ringfill {
namespace {

/// A filler whose own range goes far over what counts of it: how hot it is laid is for somebody qualified,
/// and the metal under it may not bear it.
void judge_filler_range(CautionList& cautions, const WornBore& bore, const Procedure& procedure,
                        const Preheat& preheat, UnitSystem units) {
    if (!preheat.filler_range || !preheat.approved.empty())
        return;
    const FillerRange& range = *preheat.filler_range;
    const bool softens = preheat.interpass_max && preheat.interpass_max->value < range.high;
    cautions.before(
        fmt::format("Have the preheat settled by an approved procedure: the metal of {} is laid at {} to {}, "
                    "of which {} counts here{}.",
                    procedure.filler, show_exact(range.low, units), show_exact(range.high, units),
                    show_exact(range.counted, units),
                    softens ? fmt::format("; the metal under it must not pass {}",
                                          show_exact(preheat.interpass_max->value, units))
                            : std::string()),
        softens
            ? fmt::format("the rest of that range would soften {}: {}", bore.base, preheat.interpass_max->by)
            : std::string("how hot within that range hangs on the wall and on how hard it is"),
        range.source);
}

/// The method that asks for the most over what rules, of those that are marked as `applies`.
const PreheatMethod* most_over(const Preheat& preheat, bool applies, double margin_K) {
    const PreheatMethod* most = nullptr;
    const auto least = preheat.least();
    for (const PreheatMethod& method : preheat.methods)
        if (method.applies == applies && method.minimum && least &&
            method.minimum->value() > least->value() + margin_K &&
            (!most || *method.minimum > *most->minimum))
            most = &method;
    return most;
}

/// Heat that metal of its own practice is spared, though what is laid on it would ask for it.
void judge_spared(CautionList& cautions, const PreheatMethod& method, UnitSystem units) {
    const std::string most = show_exact(*method.minimum, units);
    cautions.before(
        fmt::format("Do not heat this metal for its filler: {} is {}. Take another filler, or have an "
                    "approved procedure settle the two.",
                    method.name,
                    method.range_from ? fmt::format("{} to {}", show_exact(*method.range_from, units), most)
                                      : most),
        method.note, method.source);
}

/// Methods that ask for more than what rules, with a figure.
void judge_rivals(CautionList& cautions, const BoreHeat& heat, UnitSystem units) {
    const Preheat& preheat = heat.preheat;
    const PreheatMethod* over = most_over(preheat, true, 1e-6);
    if (over)
        cautions.before(
            fmt::format("The approved procedure {} rules with {}, yet {} asks for {}: ask its author before "
                        "the first arc.",
                        preheat.approved, show_minimum(*preheat.least(), units), over->name,
                        show_minimum(*over->minimum, units)),
            "a method that applies asks for more than the approved procedure", over->source);
    const PreheatMethod* more = most_over(preheat, false, much_more_K);
    if (more && !why_not_for_filler(heat.structure).empty())
        judge_spared(cautions, *more, units);
    else if (more && !(over && *over->minimum >= *more->minimum)) // else that one says it already
        cautions.before(fmt::format("{} asks for {}, much more than the {} that rule: have the procedure "
                                    "settled by somebody qualified.",
                                    more->name, show_minimum(*more->minimum, units),
                                    show_minimum(*preheat.least(), units)),
                        more->in_range ? "a second opinion, which does not rule"
                                       : "it is outside the range it was made for; the heat view says how",
                        more->source);
}

/// Methods that ask for preheat without a figure.
void judge_unnamed(CautionList& cautions, const Preheat& preheat) {
    for (const PreheatMethod& method : preheat.methods)
        if (method.asks == Asks::unnamed && !method.applies)
            cautions.before(fmt::format("Have the metal judged by somebody qualified: {} asks for more than "
                                        "any flame should give.",
                                        method.name),
                            method.note, method.source);
        else if (method.asks == Asks::unnamed && preheat.asked == PreheatState::needed_without_figure)
            cautions.before(
                fmt::format("Do not go without preheat: {} asks for it and gives no figure.", method.name),
                method.note.empty() ? std::string("it applies here") : method.note, method.source);
}

void judge_metal(CautionList& cautions, const WornBore& bore, const BoreHeat& heat) {
    if (heat.unknown_metal && !bore.magnetic)
        cautions.before("Try a magnet before any heat. Where it does not hold firmly, do not heat: identify "
                        "the metal first. Where it does, that is no leave to heat: it holds on cast iron as "
                        "well.",
                        "the metal is unknown and the job does not say whether a magnet holds");
    if (heat.unknown_metal)
        cautions.before("Have the metal judged before any heat: file, chip or spark test to tell steel from "
                        "cast iron, on which the figures here do not hold; then hardness, and a chip for "
                        "chemistry. Until then it counts as 4140.",
                        "the metal is unknown, and a magnet holds on steel and on cast iron");
    if (heat.not_the_grade)
        cautions.before(heat.unknown_metal
                            ? std::string("Ask what the metal is: its certificate shows more than 4140, "
                                          "which unknown metal counts as. The rules count beside the rows.")
                            : fmt::format("Ask what the metal is: its certificate is not of {}. The rows of "
                                          "that grade count as the least, beside the row for unknown steel.",
                                          bore.base),
                        *heat.not_the_grade);
    if (heat.dirty_steel)
        cautions.before("Expect cracks in the hot weld: lay a trial ring and check it with dye penetrant "
                        "before you go on.",
                        *heat.dirty_steel);
    if (heat.stainless_on_steel)
        cautions.before("Let the first layer melt as little of the steel as can be: mixed into the stainless "
                        "filler it makes it brittle.",
                        "a stainless filler on steel");
}

/// Steel that is preheated hardens, and wants a filler of low hydrogen; classes are those of ferritic ones.
std::string low_hydrogen(const BoreHeat& heat) {
    const bool hardens = heat.preheat.minimum && heat.preheat.minimum->value > chill_off;
    if (!hardens || !heat.ferritic_filler)
        return {};
    return " Where it names none take one of low hydrogen, of class H4, H5 or H8: this metal hardens.";
}

void judge_what_is_missing(CautionList& cautions, const Procedure& procedure, const BoreHeat& heat) {
    if (!heat.wall)
        cautions.before("Measure the boss: preheat is taken for the thickest wall, with high restraint.",
                        "the job gives neither boss_diameter nor heat_wall");
    if (!heat.hydrogen_ml_100g)
        cautions.before(fmt::format("Find the hydrogen class of {} on its certificate: without it the "
                                    "highest is taken, 20 ml/100 g, and no row made for less rules alone.{}",
                                    procedure.filler, low_hydrogen(heat)),
                        "neither its designation nor the job names one", "EN1011-2-B");
    if (heat.structure == "ferritic" && heat.laid.empty())
        cautions.before("Write current and voltage into the job: preheat is taken for the heat input that "
                        "asks for the most.",
                        procedure.approved && procedure.approved->heat_input
                            ? "the heat input is not known, nor whether it lies in the approved band"
                            : "the heat input is not known",
                        "EN1011-2-B");
}

} // namespace

std::vector<Caution> preheat_cautions(const WornBore& bore, const Procedure& procedure, const BoreHeat& heat,
                                      const Build& build, UnitSystem units) {
    CautionList cautions(bore, Matter::cracking);
    if (heat.preheat.doubt)
        return {};
    judge_metal(cautions, bore, heat);
    judge_rivals(cautions, heat, units);
    judge_unnamed(cautions, heat.preheat);
    judge_filler_range(cautions, bore, procedure, heat.preheat, units);
    judge_overruled(cautions, heat, units);
    if (heat.structure == "ferritic" || heat.structure == "martensitic")
        judge_what_is_missing(cautions, procedure, heat);
    if (bore.heat_wall && build.wall && *bore.heat_wall < *build.wall)
        cautions.before("Check heat_wall: preheat is taken for less than the wall.",
                        fmt::format("heat_wall is {}, the wall after the skim {}",
                                    show(*bore.heat_wall, units), show(*build.wall, units)),
                        "own");
    return cautions.all();
}

} // namespace ringfill
