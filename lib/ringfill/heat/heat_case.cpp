#include <ringfill/heat/heat_case.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>

namespace ringfill {
namespace {

using Shares = std::vector<std::pair<std::string, double>>;

std::optional<double> share_of(const Shares& shares, std::string_view element) {
    const double* found = find_share(shares, element);
    return found ? std::optional(*found) : std::nullopt;
}

Shares of_table(const Composition& composition) {
    Shares shares;
    for (const auto& [element, percent] : composition)
        shares.emplace_back(element, percent.value);
    return shares;
}

/// As the plugin interface numbers them.
std::optional<double> number_of_structure(std::string_view structure) {
    constexpr std::string_view numbered[] = {"ferritic",  "martensitic", "austenitic",
                                             "cast_iron", "nickel",      "copper"};
    const auto found = ranges::find(numbered, structure);
    return found == std::end(numbered) ? std::nullopt
                                       : std::optional(1.0 + static_cast<double>(found - numbered));
}

/// The limits of the filler's standard; an element that it sets none for as it usually is.
Shares of_deposit(const Filler& filler) {
    Shares shares = of_table(filler.composition);
    for (const auto& [element, percent] : filler.typical)
        if (!find_share(shares, element))
            shares.emplace_back(element, percent.value);
    return shares;
}

/// What kind of metal the filler lays, by the upper limits of its deposit; what is not named counts as none.
void judge_deposit(HeatCase& what, const Base& base, const Filler& filler) {
    const Shares shares = of_deposit(filler);
    const auto percent = [&](std::string_view element) { return share_of(shares, element).value_or(0); };
    // Common practice, no source: nickel and its alloys; 309L, 308L, not 13 % Cr.
    const bool nickel = percent("Ni") >= 40;
    const bool austenitic = percent("Cr") > 16 && percent("Ni") > 7 && !nickel;
    // Likewise, as for base metals: 10 % Mn; over 5 % Al, Sn or Cu, or of a group of bronze.
    const bool foreign = !nickel && (filler.group.ends_with("bronze_filler") || percent("Al") > 5 ||
                                     percent("Sn") > 5 || percent("Cu") > 5 || percent("Mn") >= 10);
    what.stainless_on_steel = holds_magnet(base) && austenitic;
    what.nickel_on_steel = holds_magnet(base) && nickel;
    what.foreign_on_steel = holds_magnet(base) && foreign;
    // Steel or martensitic stainless: neither of much chromium, as stainless metal, cobalt and hard iron are,
    // nor iron.
    what.ferritic_filler = !nickel && !foreign && percent("Cr") <= 16 && percent("C") < 2;
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
    what.composition = of_table(base.composition);
    for (const auto& [element, percent] : bore.composition)
        if (double* known = find_share(what.composition, element))
            *known = percent;
        else
            what.composition.emplace_back(element, percent);
    what.not_the_grade = not_of_grade(bore, base);
    what.wall = bore.heat_wall ? bore.heat_wall : wall;
    if (what.wall)
        what.combined = 2.0 * std::min(*what.wall, thick_wall);
    what.restraint = what.wall && *what.wall <= rigid_wall ? Restraint::medium : Restraint::high;
    what.hydrogen_is_measured = procedure.hydrogen_ml_100g.has_value();
    if (what.hydrogen_is_measured)
        what.hydrogen_ml_100g = Sourced<double>{*procedure.hydrogen_ml_100g, "job"};
    else
        what.hydrogen_ml_100g = filler.hydrogen_ml_100g;
    what.lowest_heat_input = lowest_heat_input;
    judge_deposit(what, base, filler);
    what.ambient = site.ambient;
    what.doubt = identity_doubt(bore, base);
    return what;
}

PreheatCase preheat_case(const HeatCase& what) {
    PreheatCase found;
    found.wall = what.wall;
    found.carbon_pct = share_of(what.composition, "C");
    if (what.base->tensile_MPa && !what.not_the_grade)
        found.tensile_MPa = what.base->tensile_MPa->value;
    if (what.hydrogen_ml_100g)
        found.hydrogen_ml_100g = what.hydrogen_ml_100g->value;
    return found;
}

Question question_on(const std::string& topic, const HeatCase& what) {
    Question question{topic, what.base->name, what.filler_name, {}};
    const auto add = [&](std::string name, std::optional<double> value) {
        if (value)
            question.numbers.emplace_back(std::move(name), *value);
    };
    for (const auto& [element, percent] : what.composition)
        add("base_" + element + "_pct", percent);
    for (const auto& [element, percent] : of_deposit(*what.filler))
        add("deposit_" + element + "_pct", percent);
    if (what.wall)
        add("wall_m", what.wall->value());
    if (what.combined)
        add("combined_thickness_m", what.combined->value());
    add("restraint", static_cast<double>(what.restraint));
    if (what.lowest_heat_input)
        add("heat_input_J_per_m", what.lowest_heat_input->value());
    add("structure", number_of_structure(what.base->structure));
    const PreheatCase known = preheat_case(what);
    add("hydrogen_mL_per_100g", known.hydrogen_ml_100g);
    add("hydrogen_is_measured", what.hydrogen_is_measured ? 1 : 0);
    if (what.ambient)
        add("ambient_K", what.ambient->value());
    add("grade_is_denied", what.not_the_grade ? std::optional(1.0) : std::nullopt);
    if (what.base->yield_MPa)
        add("yield_MPa", what.base->yield_MPa->value);
    add("tensile_MPa", known.tensile_MPa);
    if (what.base->tempering)
        add("tempering_K", what.base->tempering->value.value());
    if (what.base->softens_over)
        add("softens_over_K", what.base->softens_over->value.value());
    return question;
}

} // namespace ringfill
