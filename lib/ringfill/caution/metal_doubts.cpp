#include <range/v3/algorithm/any_of.hpp>

#include <ringfill/caution/doubt_rules.hpp>
#include <ringfill/table/sourced.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double least_hydrogen = 0.5;         // ml/100 g
constexpr double hot_post_heat_degC = 400;     // for plate whose strength comes from the quench
constexpr double share_of_a_minimum = 1.0 / 3; // of what its standard asks for at least
constexpr double share_of_a_maximum = 1.0 / 6; // where it asks for none, of carbon and manganese
constexpr double over_a_maximum = 1.5;

/// Most of an element that a grade does not limit [%; common practice, no source].
constexpr std::pair<std::string_view, double> usual_most[] = {
    {"C", 0.6}, {"Mn", 2}, {"Si", 0.8}, {"Cr", 0.5}, {"Ni", 0.6}, {"Cu", 0.6}, {"Mo", 0.2}};
constexpr double usual_most_of_others = 0.1;

double most_of(std::string_view element) {
    for (const auto& [name, most] : usual_most)
        if (name == element)
            return most;
    return usual_most_of_others;
}

std::string percent(double value, UnitSystem) {
    return fmt::format("{:.3g} %", value);
}

/// From how much to how much a certificate of this grade may print without a doubt.
Usual usual_share(const Base& base, const std::string& element) {
    const auto* least = value_named(base.composition_min, element);
    const auto* most = value_named(base.composition, element);
    const bool is_always_there = element == "C" || element == "Mn";
    return {least                     ? least->value * share_of_a_minimum
            : most && is_always_there ? most->value * share_of_a_maximum
                                      : 0,
            most ? most->value * over_a_maximum : most_of(element)};
}

} // namespace

void certificate_doubts(DoubtList& doubts, const WornBore& bore, const Base& base) {
    if (base.name == unknown_metal)
        return;
    for (const auto& [element, share] : bore.composition)
        doubts.judge("composition." + element, share, usual_share(base, element), percent,
                     " in " + base.name);
}

void approved_doubts(DoubtList& doubts, const Procedure& procedure, const std::vector<BorePlan>& bores) {
    if (procedure.hydrogen_ml_100g && *procedure.hydrogen_ml_100g < least_hydrogen)
        doubts.add("hydrogen_ml_100g", fmt::format("{:.3g} ml/100 g", *procedure.hydrogen_ml_100g),
                   fmt::format("{} ml/100 g or more", least_hydrogen),
                   fmt::format("{:.3g}", 10 * *procedure.hydrogen_ml_100g));
    const auto& approved = procedure.approved;
    if (!approved || !approved->post_heat || !approved->post_heat->temperature)
        return;
    const Temperature held = *approved->post_heat->temperature;
    const bool on_plate = ranges::any_of(
        bores, [&](const BorePlan& bore) { return bore.procedure == procedure.name && bore.heat.quenched; });
    if (on_plate && deg_c(held) > hot_post_heat_degC)
        doubts.add("approved.post_heat.temperature", show_exact(held, doubts.units),
                   fmt::format("{} or less on quenched plate",
                               show_exact(celsius(hot_post_heat_degC), doubts.units)));
}

} // namespace ringfill
