#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/draw/markup.hpp>

namespace ringfill {

/// A bore as the parts of the sheet need it.
struct SheetBore {
    const Plan& plan;
    const WornBore& worn;
    const BorePlan& planned;
    std::string path; ///< in the result, and in the job: bores[0]
    std::string id;   ///< on the page: bore-1

    UnitSystem units() const { return plan.units; }
    /// The way of one of its figures: "build.wall_mm" gives "bores[0].build.wall_mm".
    std::string at(const std::string& figure) const { return path + "." + figure; }
};

/// A bore on its own pages: facts, drawings, layers, heat, cuts, sizes, blank columns, its cautions.
Markup sheet_bore(const SheetBore& bore);

/// What it is, what it shall be, what it is welded with.
Markup sheet_facts(const SheetBore& bore);

/// Its layers, then grooves and faces.
Markup sheet_layers(const SheetBore& bore);

/// Preheat in the sentences of the heat view, the temperature curve, the steps in short.
Markup sheet_heat(const SheetBore& bore);

/// Its cuts, its size and what the gauge must read while it is warm.
Markup sheet_boring(const SheetBore& bore);

/// Columns to write in: temperatures before each layer, sizes as measured.
Markup sheet_forms(const SheetBore& bore);

} // namespace ringfill
