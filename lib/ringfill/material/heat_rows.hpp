#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/described.hpp>
#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// A figure that goes by the thickness of the metal: the first row that fits holds, its limit included.
struct ThicknessRow {
    std::optional<double> up_to_mm; ///< nothing: any thickness over the row before
    double value = 0;
    std::string document; ///< that the job must work by for the row to count; empty: whatever it works by
    std::string source;
};

/// What a standard lets the ladle hold in a product of some thickness, where that is not the same for all.
struct LadleRow {
    std::optional<double> up_to_mm;
    std::string source;                                               ///< of the limit
    std::vector<std::pair<std::string, Sourced<double>>> composition; ///< in the place of the grade's own
};

/// A listed table of preheat, and where the list stands that names the grade.
using ListedIn = std::vector<std::pair<std::string, std::string>>;

/// Heat treatment after welding as one edition of a document asks for it.
struct HeatTreatment {
    std::string document;
    std::string edition;
    double over_mm = 0;                  ///< from over this wall
    std::pair<double, double> degC = {}; ///< lowest and highest
    double min_per_25mm = 0;
    double at_least_min = 0;
    std::string source;
};

/// What metals of one kind have in common as they are welded.
struct HeatGroup {
    std::string name;
    std::vector<ThicknessRow> interpass_max_degC; ///< no ring begins over it
    /// Up to where that maximum gives way to a minimum, since it is practice only.
    std::optional<Sourced<double>> gives_way_to_degC;
    bool hardenable = false; ///< what cools fast beside the weld turns hard
    bool quenched = false;   ///< its strength comes from the mill's quench, heat takes it away
    std::optional<Sourced<double>> hardness_max_HV; ///< beside the weld, as welded
    std::optional<Sourced<double>> hardness_after_treatment_max_HV;
};

/// The value for a thickness [mm], one that is not known by its last row; nothing past the last limit.
/// @param document that the job works by; empty: none is named.
const ThicknessRow* row_for(const std::vector<ThicknessRow>& rows, std::optional<double> thickness_mm,
                            const std::string& document = {});

extern const Record thickness_row_record, ladle_row_record, heat_treatment_record, heat_group_record;

} // namespace ringfill
