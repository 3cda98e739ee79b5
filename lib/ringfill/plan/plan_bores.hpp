#pragma once

#include <vector>

#include <ringfill/plan/plan.hpp>

namespace ringfill {

/// The settings of every procedure that stands, in the order of the job.
std::vector<Settings> all_settings(const Job& job, const Shop& shop, std::vector<Fault>& faults);

/// The bores as given, and what is worked out for each without following its heat.
struct Figures {
    std::vector<GivenBore> given;
    std::vector<BoreFigures> bores;
};

/// Plans every bore whose procedure stands and judges the others as far as it goes; the faults of all are
/// collected.
Figures all_figures(const Job& job, const Shop& shop, const std::vector<Settings>& settings,
                    std::vector<Fault>& faults, const Progress& progress);

/// Follows the heat of every bore, and counts its metal with the starts that this takes.
std::vector<BorePlan> follow_bores(Figures figures, const Job& job, const Shop& shop,
                                   const Progress& progress);

} // namespace ringfill
