#include <ringfill/heat/heat_case.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>
#include <ringfill/heat/unknown_metal.hpp>

namespace ringfill {
namespace {

/// As the plugin interface numbers them, from 1.
constexpr std::string_view numbered_structures[] = {"ferritic",  "martensitic", "austenitic",
                                                    "cast_iron", "nickel",      "copper"};

/// The limits of the filler's standard; an element that it sets none for as it usually is.
Shares of_deposit(const Filler& filler) {
    Shares shares = plain_shares(filler.composition);
    fill_up(shares, filler.typical);
    return shares;
}

double number_of(double number) {
    return number;
}
template <class Quantity>
double number_of(const Quantity& quantity) {
    return quantity.value();
}

/// What kind of metal the filler lays, by the upper limits of its deposit; what is not named counts as none.
void judge_deposit(HeatCase& heat_case, const Base& base, const Filler& filler) {
    const Shares shares = of_deposit(filler);
    const auto percent = [&](std::string_view element) { return share_of(shares, element); };
    // Common practice, no source: nickel and its alloys; 309L, 308L, not 13 % Cr.
    const bool nickel = percent("Ni") >= 40;
    const bool austenitic = percent("Cr") > 16 && percent("Ni") > 7 && !nickel;
    // Likewise, as for base metals: 10 % Mn; over 5 % Al, Sn or Cu, or of a group of bronze.
    const bool foreign = !nickel && (filler.group.ends_with("bronze_filler") || percent("Al") > 5 ||
                                     percent("Sn") > 5 || percent("Cu") > 5 || percent("Mn") >= 10);
    heat_case.stainless_on_steel = holds_magnet(base) && austenitic;
    heat_case.nickel_on_steel = holds_magnet(base) && nickel;
    heat_case.foreign_on_steel = holds_magnet(base) && foreign;
    // Steel or martensitic stainless: neither of much chromium, as stainless metal, cobalt and hard iron are,
    // nor iron.
    heat_case.ferritic_filler = !nickel && !foreign && percent("Cr") <= 16 && percent("C") < 2;
}

TakenComposition composition_taken(const CompositionLimits& limits) {
    TakenComposition found{reaching(cet_index, limits), {}};
    if (!limits.cap_pct)
        return found;
    const auto most_of = [&](LinearIndex index) { return index_of(index, reaching(index, limits)); };
    found.reached = {most_of(ce_iiw_index), most_of(cet_index), most_of(pcm_index),
                     most_of(chemical_carbon_index)};
    return found;
}

void take_composition(HeatCase& what, const WornBore& bore, const Base& base) {
    const BaseComposition known = base_composition(bore, base, what.wall);
    TakenComposition chosen = composition_taken(known.limits);
    what.composition = std::move(chosen.shares);
    what.reached = chosen.reached;
    what.certified = known.is_full;
    what.cap_assumes_year = known.cap && known.cap->assumes_year;
    if (!what.not_the_grade)
        return;
    WornBore without = bore;
    without.composition.clear();
    without.carbon_equivalent_pct.reset();
    what.of_the_grade = composition_taken(base_composition(without, base, what.wall).limits);
}

void take_hydrogen(HeatCase& what, const Procedure& procedure, const Filler& filler) {
    what.hydrogen_is_measured = procedure.hydrogen_ml_100g.has_value();
    if (what.hydrogen_is_measured)
        what.hydrogen_ml_100g = {*procedure.hydrogen_ml_100g, "job"};
    else if (filler.hydrogen_ml_100g)
        what.hydrogen_ml_100g = filler.hydrogen_ml_100g;
    else
        what.hydrogen_ml_100g = {most_hydrogen_ml_100g, "hydrogen-unclassed"};
    what.hydrogen_is_assumed = !what.hydrogen_is_measured && !filler.hydrogen_ml_100g;
}

} // namespace

HeatCase heat_case(const WornBore& bore, const Procedure& procedure, const Site& site, const Family& family,
                   const Base& base, const Filler& filler, std::optional<Length> wall,
                   std::optional<EnergyPerLength> lowest_heat_input, const HeatRules& rules) {
    HeatCase what;
    what.rules = rules;
    what.family = &family;
    what.base = &base;
    what.filler = &filler;
    what.filler_name = procedure.filler;
    what.not_the_grade = not_of_grade(bore, base);
    what.wall = bore.heat_wall ? bore.heat_wall : wall;
    take_composition(what, bore, base);
    what.deposit = deposit_analysis(procedure, filler);
    if (what.wall)
        what.combined = 2.0 * std::min(*what.wall, thick_wall);
    what.restraint = what.wall && *what.wall <= rigid_wall ? Restraint::medium : Restraint::high;
    take_hydrogen(what, procedure, filler);
    what.lowest_heat_input = lowest_heat_input;
    judge_deposit(what, base, filler);
    what.group = group_of(what);
    what.as_quenched = shows_quenched_plate(what);
    what.ambient = site.ambient;
    what.doubt = identity_doubt(bore, base);
    return what;
}

Question question_on(const std::string& topic, const HeatCase& heat_case) {
    const Base& base = *heat_case.base;
    Question question{topic, base.name, heat_case.filler_name, {}};
    const auto add = [&](std::string name, double value) {
        question.numbers.emplace_back(std::move(name), value);
    };
    const auto add_quantity = [&](const char* name, const auto& quantity) {
        if (quantity)
            add(name, number_of(*quantity));
    };
    const auto add_sourced = [&](const char* name, const auto& number) {
        if (number)
            add(name, number->value);
    };
    for (const auto& [element, percent] : heat_case.composition)
        add("base_" + element + "_pct", percent);
    add_quantity("reached_CE_IIW_pct", heat_case.reached.ce_iiw);
    add_quantity("reached_CET_pct", heat_case.reached.cet);
    add_quantity("reached_Pcm_pct", heat_case.reached.pcm);
    add_quantity("reached_chemical_carbon_pct", heat_case.reached.chemical_carbon);
    const bool is_steel = base.structure == "ferritic";
    if (!is_steel || heat_case.deposit.left_out.empty())
        for (const auto& [element, percent] :
             is_steel ? heat_case.deposit.shares : of_deposit(*heat_case.filler))
            add("deposit_" + element + "_pct", percent);
    add_quantity("wall_m", heat_case.wall);
    add_quantity("combined_thickness_m", heat_case.combined);
    add("restraint", static_cast<double>(heat_case.restraint));
    add_quantity("heat_input_J_per_m", heat_case.lowest_heat_input);
    if (const auto found = ranges::find(numbered_structures, base.structure);
        found != std::end(numbered_structures))
        add("structure", 1.0 + static_cast<double>(found - numbered_structures));
    add_sourced("hydrogen_mL_per_100g", heat_case.hydrogen_ml_100g);
    add("hydrogen_is_measured", heat_case.hydrogen_is_measured ? 1 : 0);
    add_quantity("ambient_K", heat_case.ambient);
    if (heat_case.not_the_grade)
        add("grade_is_denied", 1);
    add_sourced("yield_MPa", base.yield_MPa);
    if (!heat_case.not_the_grade)
        add_sourced("tensile_MPa", base.tensile_MPa);
    if (base.tempering)
        add("tempering_K", base.tempering->value.value());
    if (base.softens_over)
        add("softens_over_K", base.softens_over->value.value());
    return question;
}

} // namespace ringfill
