#include <ringfill/heat/heat_case.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/identity.hpp>

namespace ringfill {
namespace {

std::optional<double> share_of(const std::vector<std::pair<std::string, double>>& composition,
                               std::string_view element) {
    const auto found = ranges::find(composition, element, [](const auto& one) { return one.first; });
    return found == composition.end() ? std::nullopt : std::optional(found->second);
}

/// An element that is not named counts as none of it.
double percent_of(const std::vector<std::pair<std::string, double>>& composition, std::string_view element) {
    return share_of(composition, element).value_or(0);
}

std::vector<std::pair<std::string, double>> of_table(const Composition& composition) {
    std::vector<std::pair<std::string, double>> shares;
    for (const auto& [element, percent] : composition)
        shares.emplace_back(element, percent.value);
    return shares;
}

void replace(std::vector<std::pair<std::string, double>>& composition, const std::string& element,
             double percent) {
    const auto found = ranges::find(composition, element, [](const auto& one) { return one.first; });
    if (found == composition.end())
        composition.emplace_back(element, percent);
    else
        found->second = percent;
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
std::vector<std::pair<std::string, double>> of_deposit(const Filler& filler) {
    std::vector<std::pair<std::string, double>> shares = of_table(filler.composition);
    for (const auto& [element, percent] : filler.typical)
        if (!share_of(shares, element))
            shares.emplace_back(element, percent.value);
    return shares;
}

// Of the upper limits, common practice, no source: 309L, 308L, not 13 % Cr; nickel and its alloys.
bool is_nickel(const Filler& filler) {
    return percent_of(of_deposit(filler), "Ni") >= 40;
}
bool is_austenitic(const Filler& filler) {
    const auto shares = of_deposit(filler);
    return percent_of(shares, "Cr") > 16 && percent_of(shares, "Ni") > 7 && !is_nickel(filler);
}

// Common practice, no source, as for base metals: 10 % Mn; over 5 % Al, Sn or Cu, or of a group of bronze.
bool is_foreign(const Filler& filler) {
    const auto shares = of_deposit(filler);
    const auto over = [&](std::string_view element, double percent) {
        return percent_of(shares, element) > percent;
    };
    if (is_nickel(filler))
        return false;
    return filler.group.ends_with("bronze_filler") || over("Al", 5) || over("Sn", 5) || over("Cu", 5) ||
           percent_of(shares, "Mn") >= 10;
}

/// Steel or martensitic stainless: neither of much chromium, as stainless metal, cobalt and hard iron are,
/// nor iron.
bool is_ferritic(const Filler& filler) {
    const auto shares = of_deposit(filler);
    return !is_nickel(filler) && !is_foreign(filler) && percent_of(shares, "Cr") <= 16 &&
           percent_of(shares, "C") < 2;
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
        replace(what.composition, element, percent);
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
    what.stainless_on_steel = holds_magnet(base) && is_austenitic(filler);
    what.nickel_on_steel = holds_magnet(base) && is_nickel(filler);
    what.foreign_on_steel = holds_magnet(base) && is_foreign(filler);
    what.ferritic_filler = is_ferritic(filler);
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
    add("hydrogen_mL_per_100g", preheat_case(what).hydrogen_ml_100g);
    add("hydrogen_is_measured", what.hydrogen_is_measured ? 1 : 0);
    if (what.ambient)
        add("ambient_K", what.ambient->value());
    add("grade_is_denied", what.not_the_grade ? std::optional(1.0) : std::nullopt);
    if (what.base->yield_MPa)
        add("yield_MPa", what.base->yield_MPa->value);
    if (what.base->tensile_MPa && !what.not_the_grade)
        add("tensile_MPa", what.base->tensile_MPa->value);
    if (what.base->tempering)
        add("tempering_K", what.base->tempering->value.value());
    if (what.base->softens_over)
        add("softens_over_K", what.base->softens_over->value.value());
    return question;
}

} // namespace ringfill
