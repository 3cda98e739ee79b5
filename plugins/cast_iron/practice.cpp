#include "practice.hpp"

#include <support/named_numbers.hpp>

namespace ringfill::cast_iron {
namespace {

constexpr double nickel_from_pct = 40;
constexpr double iron_carbon_from_pct = 2;
constexpr double stainless_from_pct = 10;   // of chromium
constexpr double no_iron_from_pct = 10;     // of nickel, manganese
constexpr double copper_alloy_over_pct = 5; // of aluminium, tin, copper
constexpr double nodular_from_pct = 0.02;   // of magnesium

double share(const rf_question& question, const char* element) {
    return family::number_of(question, element).value_or(0);
}

/// Whether the metal is of iron and no stainless or manganese steel.
bool is_plain_iron(const rf_question& question) {
    return share(question, "deposit_Cr_pct") < stainless_from_pct &&
           share(question, "deposit_Ni_pct") < no_iron_from_pct &&
           share(question, "deposit_Mn_pct") < no_iron_from_pct &&
           share(question, "deposit_Al_pct") <= copper_alloy_over_pct &&
           share(question, "deposit_Sn_pct") <= copper_alloy_over_pct &&
           share(question, "deposit_Cu_pct") <= copper_alloy_over_pct;
}

} // namespace

Practice practice_for(const rf_question& question) {
    if (share(question, "deposit_Ni_pct") >= nickel_from_pct)
        return Practice::cold;
    const auto carbon = family::number_of(question, "deposit_C_pct");
    if (!carbon || !is_plain_iron(question))
        return Practice::none;
    return *carbon >= iron_carbon_from_pct ? Practice::hot : Practice::warm;
}

bool is_nodular(const rf_question& question) {
    return share(question, "base_Mg_pct") >= nodular_from_pct;
}

} // namespace ringfill::cast_iron
