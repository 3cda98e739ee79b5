#include <ringfill/report/csv/passes_csv.hpp>

#include <ringfill/report/csv/csv.hpp>
#include <ringfill/units/metric.hpp>

namespace ringfill {
namespace {

using Row = std::vector<Cell>;

Row start_row(const BorePlan& bore, const char* pass, std::size_t number) {
    return {bore.name, static_cast<double>(bore.count), std::string(pass), static_cast<double>(number)};
}

void add(Row& row, const Row& cells) {
    row.insert(row.end(), cells.begin(), cells.end());
}

void add_grooves(std::vector<Row>& rows, const BorePlan& bore) {
    for (std::size_t i = 0; i < bore.grooves.size(); ++i) {
        const GrooveFill& fill = bore.grooves[i];
        if (!(fill.volume > Volume()))
            continue;
        Row row = start_row(bore, "groove", i + 1);
        add(row, {"", "", 1.0, "", "", mm_min(fill.travel), rev_min(fill.torch), rev_min(fill.torch),
                  mm(fill.path), fill.laid.value(), fill.arc.value()});
        rows.push_back(row);
    }
}

void add_layers(std::vector<Row>& rows, const BorePlan& bore) {
    for (std::size_t i = 0; i < bore.layers.size(); ++i) {
        const Layer& layer = bore.layers[i];
        Row row = start_row(bore, "layer", i + 1);
        add(row, {mm(2.0 * layer.radius_before), mm(2.0 * layer.radius_after), 1.0,
                  static_cast<double>(layer.rings), mm(bore.bead.pitch), mm_min(bore.bead.travel),
                  rev_min(layer.torch), rev_min(layer.torch), mm(layer.path), layer.laid.value(),
                  layer.arc.value()});
        rows.push_back(row);
    }
}

void add_faces(std::vector<Row>& rows, const BorePlan& bore) {
    for (std::size_t i = 0; i < bore.faces.size(); ++i) {
        const FacePad& face = bore.faces[i];
        Row row = start_row(bore, "face", i + 1);
        add(row, {mm(2.0 * face.first_radius), mm(2.0 * face.last_radius), static_cast<double>(face.layers),
                  static_cast<double>(face.rings), mm(face.bead.pitch), mm_min(face.bead.travel),
                  rev_min(face.first_torch()), rev_min(face.last_torch()), mm(face.path), face.laid.value(),
                  face.arc.value()});
        rows.push_back(row);
    }
}

} // namespace

std::string passes_csv(const Plan& plan) {
    std::vector<Row> rows{{"bore", "count", "pass", "number", "from_diameter_mm", "to_diameter_mm", "layers",
                           "rings", "pitch_mm", "travel_mm_min", "torch_first_rpm", "torch_last_rpm",
                           "path_mm", "laid_kg", "arc_s"}};
    for (const BorePlan& bore : plan.bores) {
        add_grooves(rows, bore);
        add_layers(rows, bore);
        add_faces(rows, bore);
    }
    return csv(rows);
}

} // namespace ringfill
