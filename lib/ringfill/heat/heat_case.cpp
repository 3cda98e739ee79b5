#include <ringfill/heat/heat_case.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>

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

} // namespace

HeatCase heat_case(const WornBore& bore, const Procedure& procedure, const Site& site, const Family& family,
                   const Base& base, const Filler& filler, std::optional<Length> wall,
                   std::optional<EnergyPerLength> lowest_heat_input) {
    HeatCase what;
    what.family = &family;
    what.base = &base;
    what.filler = &filler;
    what.filler_name = procedure.filler;
    what.composition = plain_shares(base.composition);
    for (const auto& [element, percent] : bore.composition)
        if (double* known = value_named(what.composition, element))
            *known = percent;
        else
            what.composition.emplace_back(element, percent);
    what.not_the_grade = not_of_grade(bore, base);
    what.wall = bore.heat_wall ? bore.heat_wall : wall;
    if (what.wall)
        what.combined = 2.0 * std::min(*what.wall, thick_wall);
    what.restraint = what.wall && *what.wall <= rigid_wall ? Restraint::medium : Restraint::high;
    what.hydrogen_is_measured = procedure.hydrogen_ml_100g.has_value();
    what.hydrogen_ml_100g = filler.hydrogen_ml_100g;
    if (what.hydrogen_is_measured)
        what.hydrogen_ml_100g = {*procedure.hydrogen_ml_100g, "job"};
    what.lowest_heat_input = lowest_heat_input;
    judge_deposit(what, base, filler);
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
            add(name, quantity->value());
    };
    const auto add_sourced = [&](const char* name, const auto& number) {
        if (number)
            add(name, number->value);
    };
    for (const auto& [element, percent] : heat_case.composition)
        add("base_" + element + "_pct", percent);
    for (const auto& [element, percent] : of_deposit(*heat_case.filler))
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
