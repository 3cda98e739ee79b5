#include <ringfill/heat/boss_balance.hpp>

#include <numeric>

#include <ringfill/heat/surface_loss.hpp>

namespace ringfill {

double outflow(const BossEquation& equation, const BossField& field, const BossLoad& load) {
    const BossMesh& mesh = equation.mesh();
    const double ambient = equation.ambient();
    double watts = 0;
    for (const BareFace& face : mesh.faces)
        if (face.cell < mesh.past_boss()) {
            const double at = field.kelvin[face.cell];
            watts += face.area * (at - ambient) * equation.face_W_m2K(face, load, at);
        }
    for (std::size_t k = 0; k < mesh.along; ++k)
        watts += mesh.carry_off * (field.kelvin[mesh.slot(mesh.across - 1, k)] - ambient);
    for (const PlateJoin& join : mesh.joins) {
        const double boss = field.kelvin[join.boss_cell];
        const double plate = field.kelvin[join.plate_cell];
        watts += join.area * (boss - plate) /
                 (join.boss_distance / equation.metal().lambda(boss) +
                  join.plate_distance / equation.metal().lambda(plate));
    }
    return watts;
}

double capacity(const BossEquation& equation, const BossField& field) {
    const BossMesh& mesh = equation.mesh();
    double sum = 0;
    for (std::size_t at = mesh.first_cell(); at < mesh.past_boss(); ++at)
        sum += mesh.volume[at] * equation.metal().c(field.kelvin[at]);
    return equation.metal().density * sum;
}

double boss_mass(const BossEquation& equation) {
    const std::vector<double>& volume = equation.mesh().volume;
    const auto begin = volume.begin();
    return equation.metal().density *
           std::accumulate(begin, begin + static_cast<std::ptrdiff_t>(equation.mesh().past_boss()), 0.0);
}

} // namespace ringfill
