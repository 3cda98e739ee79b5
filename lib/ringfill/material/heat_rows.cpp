#include <ringfill/material/heat_rows.hpp>

#include <ringfill/table/figure.hpp>

namespace ringfill {
namespace {

constexpr Span thickness_mm{0, 10'000, true};
constexpr Span share_pct{0, 100};
constexpr Span any_figure{0, 10'000};
constexpr Span furnace_degC{0, 1'300};
constexpr Span minutes{0, 10'000};
constexpr Span vickers{0, 2'000, true};

constexpr Field thickness_row_fields[] = {
    field<&ThicknessRow::up_to_mm>("up_to_mm", thickness_mm, "40"),
    must<&ThicknessRow::value>("value", any_figure, "0.47"),
    field<&ThicknessRow::document>("document", table_words, R"("AWS D1.1")"),
    source_field<&ThicknessRow::source>("source", R"("EN10025-2")").required(),
};

constexpr Field ladle_row_fields[] = {
    field<&LadleRow::up_to_mm>("up_to_mm", thickness_mm, "40"),
    source_field<&LadleRow::source>("source", R"("EN10025-2")").required(),
    must<&LadleRow::composition>("composition_pct", share_pct, R"({ "C": [0.20, "EN10025-2"] })"),
};

constexpr Field heat_treatment_fields[] = {
    must<&HeatTreatment::document>("document", table_words, R"("ASME B31.3")"),
    must<&HeatTreatment::edition>("edition", table_words, R"("2016")"),
    field<&HeatTreatment::over_mm>("over_mm", Span{0, 10'000}, "13"),
    must<&HeatTreatment::degC>("degC", furnace_degC, "[650, 705]"),
    must<&HeatTreatment::min_per_25mm>("min_per_25mm", minutes, "60"),
    must<&HeatTreatment::at_least_min>("at_least_min", minutes, "15"),
    source_field<&HeatTreatment::source>("source", R"("B31.3-2016")").required(),
};

constexpr Field heat_group_fields[] = {
    must<&HeatGroup::interpass_max_degC>("interpass_max_degC", list_of(thickness_row_record, 1, 20),
                                         R"([{ "value": 250, "source": "practice" }])"),
    field<&HeatGroup::gives_way_to_degC>("gives_way_to_degC", furnace_degC, R"([315, "practice"])"),
    field<&HeatGroup::hardenable>("hardenable", "true"),
    field<&HeatGroup::quenched>("quenched", "true"),
    field<&HeatGroup::hardness_max_HV>("hardness_max_HV", vickers, R"([380, "ISO15614-1"])"),
    field<&HeatGroup::hardness_after_treatment_max_HV>("hardness_after_treatment_max_HV", vickers,
                                                       R"([350, "ISO15614-1"])"),
};

} // namespace

const Record thickness_row_record =
    record_of<ThicknessRow>("a figure by thickness", "", thickness_row_fields);
const Record ladle_row_record = record_of<LadleRow>("a composition by thickness", "", ladle_row_fields);
const Record heat_treatment_record =
    record_of<HeatTreatment>("a heat treatment after welding", "", heat_treatment_fields);
const Record heat_group_record = record_of<HeatGroup>("a group of metals", "", heat_group_fields);

const ThicknessRow* row_for(const std::vector<ThicknessRow>& rows, std::optional<double> thickness,
                            const std::string& document) {
    constexpr double last_digit = 1 + 1e-9; // a limit of 38.1 mm includes 1.5 in
    const ThicknessRow* last = nullptr;
    for (const ThicknessRow& row : rows) {
        if (!row.document.empty() && row.document != document)
            continue;
        last = &row;
        if (!row.up_to_mm || (thickness && *thickness <= *row.up_to_mm * last_digit))
            return &row;
    }
    return thickness ? nullptr : last;
}

} // namespace ringfill
