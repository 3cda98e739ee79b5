#include <ringfill/heat/boss_mesh.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <ringfill/heat/surface_loss.hpp>

namespace ringfill {
namespace {

constexpr double pi = std::numbers::pi;

// The grading of the mesh [own choice, tried against a three-dimensional reference; section 9].
constexpr double usual_thickness = 5e-3; // m
constexpr double surface_cell = 4e-3;    // m
constexpr double least_across = 4;
constexpr double most_across = 12;
constexpr double least_along = 8;
constexpr double usual_along = 16;
constexpr std::size_t plate_cells = 14;
constexpr double first_of_plate = 5e-3; // m
/// Cells of metal that is thinner or shorter than any that is welded get no finer than this [m].
constexpr double finest = 1e-3;

/// A length counts as whole within this share.
constexpr double whole_within = 1e-9;

double ring_area(double inner, double outer) {
    return pi * (outer * outer - inner * inner);
}

/// The factor from which a growing sum reaches what it must fill, by bisection.
template <class Sum>
double growth(double filled, const Sum& sum_at) {
    double low = 0;
    double high = 2;
    while (sum_at(high) < filled)
        high *= 2;
    for (int i = 0; i < 200 && high - low > 1e-15 * high; ++i) {
        const double middle = (low + high) / 2;
        (sum_at(middle) < filled ? low : high) = middle;
    }
    return (low + high) / 2;
}

/// The radii between the cells of a wall, finer towards both surfaces.
std::vector<double> graded_radii(double inner, double outer) {
    const double wall = outer - inner;
    const double least = std::clamp(std::ceil(wall / finest - whole_within), 1.0, least_across);
    const double across = std::clamp(std::ceil(wall / usual_thickness - whole_within), least, most_across);
    const auto count = static_cast<std::size_t>(across);
    const double first = std::min(surface_cell, wall / across);
    const auto thickness = [&](std::size_t i, double factor) {
        return first * std::pow(factor, static_cast<double>(std::min(i, count - 1 - i)));
    };
    const double factor = growth(wall, [&](double g) {
        double sum = 0;
        for (std::size_t i = 0; i < count; ++i)
            sum += thickness(i, g);
        return sum;
    });
    std::vector<double> radii{inner};
    for (std::size_t i = 0; i < count; ++i)
        radii.push_back(radii.back() + thickness(i, factor));
    radii.back() = outer;
    return radii;
}

std::size_t cells_along(double length, double pitch) {
    const double bands = std::ceil(length / pitch - whole_within);
    const double bands_a_cell = std::ceil(bands / usual_along);
    const double least = std::clamp(std::ceil(length / finest - whole_within), 1.0, least_along);
    return static_cast<std::size_t>(std::max(least, std::ceil(bands / bands_a_cell)));
}

void add_cells(BossMesh& mesh) {
    const std::size_t slots = mesh.first_of_plates();
    mesh.volume.assign(slots, 0);
    mesh.to_outer.assign(slots, 0);
    mesh.to_farther.assign(slots, 0);
    const std::vector<double>& r = mesh.radii;
    for (std::size_t k = 0; k < mesh.along; ++k)
        for (std::size_t i = 0; i < mesh.across; ++i) {
            const std::size_t here = mesh.slot(i, k);
            const double area = ring_area(r[i], r[i + 1]);
            mesh.volume[here] = area * mesh.cell_length;
            if (i + 1 < mesh.across)
                mesh.to_outer[here] = 2 * pi * r[i + 1] * mesh.cell_length / ((r[i + 2] - r[i]) / 2);
            if (k + 1 < mesh.along)
                mesh.to_farther[here] = area / mesh.cell_length;
        }
}

/// Part of the cell k along z that a plate covers [m].
double covered_by(const BossPlate& plate, const BossMesh& mesh, std::size_t k) {
    const double from = plate.middle.value() - plate.thickness.value() / 2;
    const double near = static_cast<double>(k) * mesh.cell_length;
    return std::max(0.0,
                    std::min(from + plate.thickness.value(), near + mesh.cell_length) - std::max(from, near));
}

void add_faces(BossMesh& mesh, const BossShape& shape) {
    const double inner = mesh.radii.front();
    const double outer = mesh.radii.back();
    for (std::size_t k = 0; k < mesh.along; ++k) {
        const double middle = (static_cast<double>(k) + 0.5) * mesh.cell_length;
        mesh.faces.push_back({mesh.slot(0, k), 2 * pi * inner * mesh.cell_length,
                              bore_emissivity(middle, mesh.length, 2 * inner), FaceKind::bore});
        double covered = 0;
        for (const BossPlate& plate : shape.plates)
            covered += covered_by(plate, mesh, k);
        mesh.faces.push_back({mesh.slot(mesh.across - 1, k),
                              2 * pi * outer * std::max(0.0, mesh.cell_length - covered), scaled_emissivity,
                              FaceKind::outside});
    }
    for (const std::size_t k : {std::size_t{0}, mesh.along - 1})
        for (std::size_t i = 0; i < mesh.across; ++i)
            mesh.faces.push_back({mesh.slot(i, k), ring_area(mesh.radii[i], mesh.radii[i + 1]),
                                  scaled_emissivity, FaceKind::end});
}

void add_plate(BossMesh& mesh, const BossPlate& plate) {
    const double outer = mesh.radii.back();
    const double reach = plate.reach.value();
    const double factor = growth(reach, [&](double g) {
        double sum = 0;
        for (std::size_t i = 0; i < plate_cells; ++i)
            sum += first_of_plate * std::pow(g, static_cast<double>(i));
        return sum;
    });
    const std::size_t first = mesh.volume.size();
    double from = outer;
    double width = std::min(first_of_plate, reach);
    double width_before = 0;
    for (std::size_t i = 0; i < plate_cells; ++i, width_before = width, width *= factor) {
        const double to = from + width;
        const double area = ring_area(from, to);
        mesh.volume.push_back(area * plate.thickness.value());
        mesh.faces.push_back({first + i, 2 * area, scaled_emissivity,
                              plate.wrapped ? FaceKind::wrapped_plate : FaceKind::plate});
        if (i > 0)
            mesh.links.push_back({first + i - 1, first + i,
                                  2 * pi * from * plate.thickness.value() / ((width_before + width) / 2)});
        from = to;
    }
    const double boss_distance = (outer - mesh.radii[mesh.across - 1]) / 2;
    for (std::size_t k = 0; k < mesh.along; ++k)
        if (const double covered = covered_by(plate, mesh, k); covered > 0)
            mesh.joins.push_back({mesh.slot(mesh.across - 1, k), first, 2 * pi * outer * covered,
                                  boss_distance, std::min(first_of_plate, reach) / 2});
}

} // namespace

Length usual_reach(Length thickness) {
    return millimetres(600) * std::sqrt(thickness.value() / 30e-3);
}

BossMesh boss_mesh(const BossShape& shape) {
    BossMesh mesh;
    mesh.radii = graded_radii(shape.bore_radius.value(), shape.outer_radius.value());
    mesh.across = mesh.radii.size() - 1;
    mesh.along = cells_along(shape.length.value(), shape.pitch.value());
    mesh.length = shape.length.value();
    mesh.cell_length = mesh.length / static_cast<double>(mesh.along);
    mesh.carry_off = shape.carry_off.value() / static_cast<double>(mesh.along);
    add_cells(mesh);
    add_faces(mesh, shape);
    for (const BossPlate& plate : shape.plates)
        add_plate(mesh, plate);
    mesh.to_outer.resize(mesh.volume.size());
    mesh.to_farther.resize(mesh.volume.size());
    return mesh;
}

void stand_for(BossMesh& mesh, double times) {
    for (std::vector<double>* grows : {&mesh.volume, &mesh.to_outer, &mesh.to_farther})
        for (double& value : *grows)
            value *= times;
    for (BareFace& face : mesh.faces)
        face.area *= std::pow(times, 2.0 / 3);
}

} // namespace ringfill
