#include <ringfill/caution/filler_rules.hpp>

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <range/v3/algorithm/find.hpp>

namespace ringfill {
namespace {

constexpr std::size_t most_named = 4;

std::string family_of(const std::string& name) {
    return name.substr(0, name.find('/'));
}

bool is_of_another_family(const WornBore& bore, const Procedure& procedure) {
    return family_of(bore.base) != family_of(procedure.filler);
}

/// The first few names, and how many more there are.
std::string few_of(const std::vector<std::string>& names) {
    const auto end = names.begin() + static_cast<std::ptrdiff_t>(std::min(names.size(), most_named));
    std::string text = fmt::format("{}", fmt::join(names.begin(), end, ", "));
    if (names.size() > most_named)
        text += fmt::format(" or {} more", names.size() - most_named);
    return text;
}

/// "; or lay a buffer of … first": of fillers of other families; a buffer of its own kind is no other one.
std::string or_another(std::vector<std::string> buffer, const std::string& filler) {
    std::erase_if(buffer, [&](const std::string& one) { return family_of(one) == family_of(filler); });
    return buffer.empty() ? std::string() : fmt::format("; or lay a buffer of {} first", few_of(buffer));
}

std::string heat_input(EnergyPerLength energy) {
    return fmt::format("{:.3g} kJ/mm", energy.value() / 1e6);
}

std::string asked_by(const Approved& approved, UnitSystem units) {
    std::vector<std::string> parts;
    if (approved.preheat_min)
        parts.push_back("preheat at least " + show_exact(*approved.preheat_min, units));
    if (approved.interpass_max)
        parts.push_back("interpass at most " + show_exact(*approved.interpass_max, units));
    if (approved.heat_input)
        parts.push_back(fmt::format("heat input {} to {}", heat_input(approved.heat_input->first),
                                    heat_input(approved.heat_input->second)));
    if (approved.post_heat && approved.post_heat->temperature && approved.post_heat->time)
        parts.push_back(fmt::format("after welding {} for {}",
                                    show_exact(*approved.post_heat->temperature, units),
                                    show(*approved.post_heat->time)));
    return parts.empty() ? "what it asks for stands in it" : fmt::format("{}", fmt::join(parts, ", "));
}

} // namespace

std::vector<Caution> family_cautions(const WornBore& bore, const Procedure& procedure) {
    CautionList cautions(bore, Matter::quality);
    if (is_of_another_family(bore, procedure))
        cautions.before(
            "Have the approved procedure name this filler for this metal before you load it.",
            fmt::format("{} is to be welded with {}, of another family", bore.base, procedure.filler));
    return cautions.all();
}

std::vector<Caution> suit_cautions(const WornBore& bore, const Procedure& procedure, const Suit* rule,
                                   const std::vector<std::string>& buffer) {
    CautionList cautions(bore, Matter::cracking);
    if (!rule)
        cautions.before(fmt::format("Settle with somebody qualified whether {} may go on {}: no table says.",
                                    procedure.filler, bore.base),
                        "neither by their groups nor by their names is there a rule for the two");
    else if (rule->verdict == Verdict::not_advised)
        cautions.before(
            fmt::format("Do not weld {} with {} unless the approved procedure says so: it is not advised.",
                        bore.base, procedure.filler),
            rule->why, rule->source);
    else if (rule->verdict != Verdict::recommended)
        cautions.before(
            ranges::find(buffer, procedure.filler) != buffer.end()
                ? fmt::format(
                      "Lay the first layer as a buffer, with as little of {} melted in as can be: the "
                      "lowest current that wets, the arc on the bead before{}.",
                      bore.base, or_another(buffer, procedure.filler))
                : fmt::format("Lay a buffer first, of {}, or have the approved procedure say otherwise; this "
                              "plan counts {} alone.",
                              few_of(buffer), procedure.filler),
            rule->why, rule->source);
    return cautions.all();
}

std::vector<Caution> dilution_cautions(const WornBore& bore, const Procedure& procedure,
                                       const Dilution& dilution) {
    CautionList cautions(bore, Matter::quality);
    if (is_of_another_family(bore, procedure) && dilution.finish_layer > 0 &&
        dilution.finish_layer < dilution.needed)
        cautions.before(
            fmt::format("Bore deeper first and lay {} layers under the finished surface, or melt in less: "
                        "there the metal is not yet that of {}.",
                        dilution.needed, procedure.filler),
            fmt::format("the finished surface lies in layer {} with about {:.0f} % of the base metal in it",
                        dilution.finish_layer,
                        100 * dilution.base_left[static_cast<std::size_t>(dilution.finish_layer) - 1]),
            dilution.share.source == "job" ? "own" : dilution.share.source);
    return cautions.all();
}

std::vector<Caution> ferrite_cautions(const WornBore& bore, const Dilution& dilution,
                                      const LayerMetals& metals) {
    CautionList cautions(bore, Matter::cracking);
    if (metals.layers.empty())
        return {};
    if (const double first = ferrite(schaeffler(metals.layers.front())); first < least_ferrite)
        cautions.before(
            "Melt in less of the base metal with the first layer (less current, the arc on the bead before), "
            "and test it with dye: without ferrite it cracks hot, and on hard steel it may be part "
            "martensite.",
            fmt::format("with {:.0f} % of the base metal in it the first layer is estimated to hold {:.0f} % "
                        "ferrite, give or take {:.0f} points; 3 to 4 are the least",
                        100 * dilution.share.value, first, ferrite_scatter),
            "ferrite-least");
    return cautions.all();
}

std::vector<Caution> form_cautions(const Procedure& procedure, const Filler& filler) {
    CautionList cautions(procedure, Matter::cracking);
    if (filler.form == FillerForm::stick && filler.hydrogen_ml_100g)
        cautions.before(
            "Dry the electrodes as their maker says and take them from a heated quiver: preheat here is "
            "reckoned for dry ones.",
            procedure.hydrogen_ml_100g
                ? fmt::format("the {:.3g} ml/100 g measured for {} hold only for electrodes as dry as those",
                              *procedure.hydrogen_ml_100g, procedure.filler)
                : fmt::format("the {:.3g} ml/100 g of {} is the limit of its class for dry electrodes",
                              filler.hydrogen_ml_100g->value, procedure.filler));
    return cautions.all();
}

std::vector<Caution> approved_cautions(const Procedure& procedure, UnitSystem units) {
    if (!procedure.approved)
        return {};
    const Approved& approved = *procedure.approved;
    const bool contradictory =
        approved.preheat_min && approved.interpass_max && *approved.interpass_max < *approved.preheat_min;
    CautionList cautions(procedure, Matter::cracking);
    cautions.before(
        fmt::format("The approved procedure {} rules: {}.{}", approved.reference, asked_by(approved, units),
                    contradictory ? " Contradictory: its minimum is over its maximum; ask before any arc."
                                  : ""),
        "the job gives it; the methods stand beside it");
    return cautions.all();
}

} // namespace ringfill
