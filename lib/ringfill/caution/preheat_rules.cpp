#include <ringfill/caution/preheat_rules.hpp>

#include <fmt/format.h>

namespace ringfill {
namespace {

Caution before(const WornBore& bore, std::string text, std::string because, std::string source) {
    return {bore.name, "before", "yes", std::move(text), std::move(because), std::move(source)};
}

Caution identify(const WornBore& bore) {
    return before(bore,
                  "Stop and identify the metal before any heat: a magnet does not hold, so it is no ferritic "
                  "steel. Austenitic manganese steel is ruined by preheat. No preheat figure is given.",
                  fmt::format("the job says so of {}", bore.base), "practice");
}

Caution contradiction(const WornBore& bore, const Preheat& preheat, UnitSystem units) {
    return before(bore, "Contradictory: needs an approved procedure. Neither figure is changed.",
                  fmt::format("at least {} by {} [{}], at most {} by {} [{}]",
                              show_minimum(preheat.minimum->value, units), preheat.minimum->by,
                              preheat.minimum->source, show_maximum(preheat.interpass_max->value, units),
                              preheat.interpass_max->by, preheat.interpass_max->source),
                  "practice");
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

void about_rivals(std::vector<Caution>& cautions, const WornBore& bore, const Preheat& preheat,
                  UnitSystem units) {
    if (const PreheatMethod* more = most_over(preheat, true, 1e-6))
        cautions.push_back(before(
            bore,
            fmt::format("The approved procedure {} rules with {}, yet {} asks for {}: ask its author before "
                        "the first arc.",
                        preheat.approved, show_minimum(preheat.minimum->value, units), more->name,
                        show_minimum(*more->minimum, units)),
            "a method that applies asks for more than the approved procedure", more->source));
    if (const PreheatMethod* more = most_over(preheat, false, much_more_K))
        cautions.push_back(before(
            bore,
            fmt::format("{} asks for {}, much more than the {} that rule: have the procedure settled by "
                        "somebody qualified.",
                        more->name, show_minimum(*more->minimum, units),
                        show_minimum(preheat.minimum->value, units)),
            more->in_range ? "a second opinion, which does not rule"
                           : "it is outside the range it was made for; the heat view says how",
            more->source));
    if (preheat.asked_without_figure)
        cautions.push_back(before(bore,
                                  "Do not go without preheat: EN 1011-2 method A asks for it, and its "
                                  "graphs, which are not in this plan, say how much.",
                                  "the combined thickness is over the limit of its Table C.1",
                                  "EN1011-2-C1"));
}

void about_metal(std::vector<Caution>& cautions, const WornBore& bore, const BoreHeat& heat) {
    if (heat.unknown_metal && !bore.magnetic)
        cautions.push_back(before(bore,
                                  "Try a magnet before any heat: the figures here hold only if it holds "
                                  "firmly. If not, do not heat: identify the metal first.",
                                  "the metal is unknown and the job does not say whether a magnet holds",
                                  "practice"));
    if (heat.unknown_metal)
        cautions.push_back(before(bore,
                                  "Have the metal judged before the first arc: file or spark test, hardness, "
                                  "a chip for chemistry. Until then it counts as 4140.",
                                  "the metal is unknown", "practice"));
    if (heat.not_the_grade)
        cautions.push_back(before(bore,
                                  fmt::format("The mill certificate is not of {}: its rows do not count, the "
                                              "row for unknown steel does. Ask what the metal is.",
                                              bore.base),
                                  *heat.not_the_grade, "practice"));
}

void about_missing(std::vector<Caution>& cautions, const WornBore& bore, const Procedure& procedure,
                   const BoreHeat& heat) {
    if (!heat.wall)
        cautions.push_back(before(bore,
                                  "Measure the boss: preheat is taken for the thickest wall, with high "
                                  "restraint.",
                                  "the job gives neither boss_diameter nor heat_wall", "practice"));
    if (!heat.hydrogen_ml_100g)
        cautions.push_back(before(bore,
                                  fmt::format("Find the hydrogen class of {} on its certificate: without it "
                                              "the highest is taken, and no low-hydrogen row counts.",
                                              procedure.filler),
                                  "neither its designation nor the job names one", "EN1011-2-B"));
    if (heat.laid.empty())
        cautions.push_back(
            before(bore, "Write current and voltage into the job: preheat is taken for no heat input at all.",
                   procedure.approved && procedure.approved->heat_input
                       ? "the heat input is not known, nor whether it lies in the approved band"
                       : "the heat input is not known",
                   "EN1011-2-B"));
}

} // namespace

std::vector<Caution> heat_stops(const WornBore& bore, const BoreHeat& heat, UnitSystem units) {
    if (heat.must_be_identified)
        return {identify(bore)};
    if (heat.preheat.contradictory)
        return {contradiction(bore, heat.preheat, units)};
    if (!heat.preheat.minimum)
        return {before(bore, "Take preheat from an approved procedure: no figure can be given here.",
                       fmt::format("no table and no rule of its family covers {}", bore.base), "practice")};
    return {};
}

std::vector<Caution> preheat_cautions(const WornBore& bore, const Procedure& procedure, const BoreHeat& heat,
                                      const Build& build, UnitSystem units) {
    std::vector<Caution> cautions;
    if (heat.must_be_identified)
        return cautions;
    about_metal(cautions, bore, heat);
    about_rivals(cautions, bore, heat.preheat, units);
    if (heat.structure == "ferritic" || heat.structure == "martensitic")
        about_missing(cautions, bore, procedure, heat);
    if (bore.heat_wall && build.wall && *bore.heat_wall < *build.wall)
        cautions.push_back(before(bore, "Check heat_wall: preheat is taken for less than the wall.",
                                  fmt::format("heat_wall is {}, the wall after the skim {}",
                                              show(*bore.heat_wall, units), show(*build.wall, units)),
                                  "own"));
    return cautions;
}

} // namespace ringfill
