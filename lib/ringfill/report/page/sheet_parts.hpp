#pragma once

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/page/page.hpp>

namespace ringfill {

/// The whole result.
inline Part result_of(const Plan& plan) {
    return {"", plan.units};
}

// The parts of the sheet in the order they stand on it.

/// What the sheet is and is not, the job, bores, wire, arc, and how hot each bore must be.
Markup sheet_head(const Plan& plan);
/// What to take, with a box to tick a line.
Markup sheet_take(const Plan& plan);
/// The day by the clock, in short.
Markup sheet_day(const Plan& plan);
/// The fire watch by the clock, with columns to write in when it began and ended.
Markup sheet_fire_watch(const Plan& plan);
/// The cautions about the job and its procedures; then one list, for all of the job, of what may apply
/// because the job does not say.
Markup job_cautions(const Plan& plan);

/// A bore as the parts of the sheet need it; its path is that in the result and in the job: bores[0].
struct SheetBore : Part {
    const Plan& plan;
    const WornBore& worn;
    const BorePlan& planned;
    std::string id; ///< on the page: bore-1
};

/// A bore on its own pages: facts, drawings, layers, heat, cuts, sizes, blank columns, its cautions.
Markup sheet_bore(const SheetBore& bore);
/// Its layers, then grooves and faces.
Markup sheet_layers(const SheetBore& bore);
/// Preheat in the sentences of the heat view, the temperature curve, the steps in short.
Markup sheet_heat(const SheetBore& bore);
/// Its cuts, its size and what the gauge must read while it is warm.
Markup sheet_boring(const SheetBore& bore);
/// The cautions about it: before, during and after the work. Empty when there are none.
Markup bore_cautions(const SheetBore& bore);

// Figures that stand in more than one of them. `in` is the bore in the result.

/// The diameter that it is skimmed to, or what stands for none.
Markup skim_figure(const Part& in, const BorePlan& bore, std::string_view none);
/// The diameter that its last layer comes to.
Markup weld_figure(const Part& in, const BorePlan& bore);
/// "3 × 22": layers and rings of each.
Markup layers_figure(const Part& in, const BorePlan& bore);
/// What is melted for it: wire by its mass, electrodes and rods by their number.
Markup filler_figure(const Part& in, const BorePlan& bore);

} // namespace ringfill
