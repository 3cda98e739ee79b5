#include <range/v3/algorithm/find.hpp>

#include <ringfill/caution/rules.hpp>
#include <ringfill/fault/nearest.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_named = 4; // fillers of a buffer

std::string family_of(const std::string& name) {
    return name.substr(0, name.find('/'));
}

bool is_of_another_family(const RuledBore& on) {
    return family_of(on.bore.base) != family_of(on.procedure().filler);
}

/// "; or lay a buffer of … first": of fillers of other families; a buffer of its own kind is no other one.
std::string or_another(std::vector<std::string> buffer, const std::string& filler) {
    std::erase_if(buffer, [&](const std::string& one) { return family_of(one) == family_of(filler); });
    return buffer.empty() ? ""
                          : fmt::format("; or lay a buffer of {} first", few_of(buffer, most_named, "or"));
}

} // namespace

void family_rules(CautionList& cautions, const RuledBore& on) {
    if (is_of_another_family(on))
        cautions.before("Have the approved procedure name this filler for this metal before you load it.",
                        "{} is to be welded with {}, of another family", on.bore.base, on.procedure().filler);
}

void suit_rules(CautionList& cautions, const RuledBore& on) {
    const std::string& filler = on.procedure().filler;
    const std::string& base = on.bore.base;
    const std::vector<std::string>& buffer = on.plan.buffer;
    const auto& rule = on.plan.suit;
    if (!rule)
        cautions.before("Settle with somebody qualified whether {} may go on {}: no table says.",
                        "neither by their groups nor by their names is there a rule for the two", filler,
                        base);
    else if (rule->verdict == Verdict::not_advised)
        cautions.before_by(rule->source,
                           "Do not weld {} with {} unless the approved procedure says so: it is not advised.",
                           "{2}", base, filler, rule->why);
    else if (rule->verdict != Verdict::recommended && ranges::find(buffer, filler) != buffer.end())
        cautions.before_by(rule->source,
                           "Lay the first layer as a buffer, with as little of {} melted in as can be: the "
                           "lowest current that wets, the arc on the bead before{}.",
                           "{2}", base, or_another(buffer, filler), rule->why);
    else if (rule->verdict != Verdict::recommended)
        cautions.before_by(rule->source,
                           "Lay a buffer first, of {}, or have the approved procedure say otherwise; this "
                           "plan counts {} alone.",
                           "{2}", few_of(buffer, most_named, "or"), filler, rule->why);
}

void dilution_rules(CautionList& cautions, const RuledBore& on) {
    const auto& dilution = on.plan.dilution;
    if (!dilution || !is_of_another_family(on) || dilution->finish_layer <= 0 ||
        dilution->finish_layer >= dilution->needed)
        return;
    const double left = dilution->base_left[static_cast<std::size_t>(dilution->finish_layer) - 1];
    cautions.before_by(dilution->share.source == "job" ? "own" : dilution->share.source,
                       "Bore deeper first and lay {} layers under the finished surface, or melt in less: "
                       "there the metal is not yet that of {}.",
                       "the finished surface lies in layer {2} with about {3:.0f} % of the base metal in it",
                       dilution->needed, on.procedure().filler, dilution->finish_layer, 100 * left);
}

void ferrite_rules(CautionList& cautions, const RuledBore& on) {
    const auto& metals = on.plan.layer_metals;
    if (!metals || metals->layers.empty())
        return;
    if (const double first = ferrite(schaeffler(metals->layers.front())); first < least_ferrite)
        cautions.before_by("ferrite-least",
                           "Melt in less of the base metal with the first layer (less current, the arc on "
                           "the bead before), and test it with dye: without ferrite it cracks hot, and on "
                           "hard steel it may be part martensite.",
                           "with {:.0f} % of the base metal in it the first layer is estimated to hold "
                           "{:.0f} % ferrite, give or take {:.0f} points; 3 to 4 are the least",
                           100 * on.plan.dilution->share.value, first, ferrite_scatter);
}

void form_rules(CautionList& cautions, const Procedure& procedure, const Filler& filler) {
    if (filler.form == FillerForm::stick && filler.hydrogen_ml_100g)
        cautions.before("Dry the electrodes as their maker says and take them from a heated quiver: preheat "
                        "here is worked out for dry ones.",
                        "the {:.3g} ml/100 g {} {} {}",
                        procedure.hydrogen_ml_100g.value_or(filler.hydrogen_ml_100g->value),
                        procedure.hydrogen_ml_100g ? "measured for" : "of", procedure.filler,
                        procedure.hydrogen_ml_100g ? "hold only for electrodes as dry as those"
                                                   : "is the limit of its class for dry electrodes");
}

} // namespace ringfill
