#include <ringfill/heat/what_lowers.hpp>

#include <algorithm>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/heat/preheat_methods.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

constexpr double least_cet_pct = 0.20; // where method B begins
constexpr double low_hydrogen_ml_100g = 5;
constexpr double very_low_hydrogen_ml_100g = 3;
constexpr double more_heat = 1.25; // what a procedure test covers [EN ISO 15614-1:2017 8.4.7; read]
constexpr double most_heat_J_m = 4e6;
constexpr double least_K = 0.5; // less is not worth a word

/// The highest of the methods that apply, exact, or what is kept to where it asks for more than counts [K].
double highest_K(const Preheat& found) {
    double highest = chill_off.value();
    for (const PreheatMethod& method : found.methods)
        if (method.applies && method.minimum && method.counts)
            highest = std::max(highest, std::min(method.minimum->value(), method.counts->value()));
    return highest;
}

double highest_K(const HeatCase& heat_case) {
    Preheat found;
    gather_methods(found, heat_case);
    return highest_K(found);
}

} // namespace

std::vector<Lowering> what_lowers(const Preheat& ruled, const HeatCase& heat_case) {
    const auto rule = ranges::find(ruled.methods, true, &PreheatMethod::rules);
    if (rule == ruled.methods.end() || rule->as_hot_as_it_bears)
        return {};
    const double now_K = highest_K(ruled);
    std::vector<Lowering> all;
    const auto add = [&](LoweredBy by, const HeatCase& other, double figure) {
        if (const double less = now_K - highest_K(other); less > least_K)
            all.push_back({by, less, figure});
    };
    const double heat = heat_case.lowest_heat_input ? heat_case.lowest_heat_input->value() : 0.5e6;
    if (rule->is_formula && !heat_case.certified) {
        HeatCase lean = heat_case;
        lean.reached.cet = least_cet_pct;
        lean.certified = true;
        add(LoweredBy::certificate, lean, (697 + 53 * heat / 1e6) / 100);
    }
    const double hydrogen = heat_case.hydrogen_ml_100g->value;
    const double drier = hydrogen > low_hydrogen_ml_100g ? low_hydrogen_ml_100g : very_low_hydrogen_ml_100g;
    if (hydrogen > drier) {
        HeatCase dry = heat_case;
        dry.hydrogen_ml_100g->value = drier;
        add(LoweredBy::drier_filler, dry, drier);
    }
    if (heat_case.lowest_heat_input && heat * more_heat <= most_heat_J_m) {
        HeatCase hot = heat_case;
        hot.lowest_heat_input = *heat_case.lowest_heat_input * more_heat;
        add(LoweredBy::more_heat_input, hot, heat * more_heat);
    }
    return all;
}

} // namespace ringfill
