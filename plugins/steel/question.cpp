#include "question.hpp"

#include <cmath>

#include <fmt/format.h>

#include "say.hpp"

namespace ringfill::steel {
namespace {

/// A number that must be over 0, times a factor.
std::optional<double> over_zero(const rf_question& question, std::string_view name, double factor) {
    const auto found = family::number_of(question, name);
    if (!found)
        return std::nullopt;
    if (!(*found > 0))
        throw Refusal(std::string(name),
                      fmt::format("{} is not over 0; leave out what is not known", *found));
    return settled(*found * factor);
}

/// A number that must not be under 0, times a factor.
std::optional<double> not_under_zero(const rf_question& question, std::string_view name, double factor) {
    const auto found = family::number_of(question, name);
    if (!found)
        return std::nullopt;
    if (!(*found >= 0))
        throw Refusal(std::string(name), fmt::format("{} is under 0; leave out what is not known", *found));
    return settled(*found * factor);
}

} // namespace

double settled(double value) {
    return std::round(value * 1e9) / 1e9;
}

Asked read_question(const rf_question& question) {
    constexpr double mm = 1e3;
    constexpr double kJ_mm = 1e-6;
    Asked asked;
    asked.base = read_composition(question, "base_");
    asked.deposit = read_composition(question, "deposit_");
    asked.reached_ce = not_under_zero(question, "reached_CE_IIW_pct", 1);
    asked.reached_cet = not_under_zero(question, "reached_CET_pct", 1);
    asked.reached_pcm = not_under_zero(question, "reached_Pcm_pct", 1);
    asked.reached_chemical_carbon = not_under_zero(question, "reached_chemical_carbon_pct", 1);
    asked.wall_mm = over_zero(question, "wall_m", mm);
    asked.combined_mm = over_zero(question, "combined_thickness_m", mm);
    asked.heat_input_kJ_mm = not_under_zero(question, "heat_input_J_per_m", kJ_mm);
    asked.hydrogen_ml_100g = not_under_zero(question, "hydrogen_mL_per_100g", 1);
    asked.hydrogen_is_measured =
        asked.hydrogen_ml_100g && family::number_of(question, "hydrogen_is_measured").value_or(0) == 1;
    asked.restraint = family::number_of(question, "restraint");
    asked.yield_MPa = over_zero(question, "yield_MPa", 1);
    if (family::number_of(question, "grade_is_denied").value_or(0) == 1 && asked.yield_MPa &&
        *asked.yield_MPa <= high_yield_MPa)
        asked.yield_MPa.reset();           // richer steel than the grade may be stronger, it is hardly weaker
    over_zero(question, "tempering_K", 1); // refused where it cannot be
    over_zero(question, "softens_over_K", 1); // likewise
    over_zero(question, "preheat_min_K", 1);
    over_zero(question, "interpass_max_K", 1);
    return asked;
}

} // namespace ringfill::steel
