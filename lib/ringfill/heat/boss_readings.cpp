#include <ringfill/heat/boss_readings.hpp>

#include <algorithm>

namespace ringfill {

double coldest_bore(const BossMesh& mesh, const BossField& field) {
    double coldest = field.kelvin[mesh.slot(0, 0)];
    for (std::size_t k = 1; k < mesh.along; ++k)
        coldest = std::min(coldest, field.kelvin[mesh.slot(0, k)]);
    return coldest;
}

double mean_bore(const BossMesh& mesh, const BossField& field) {
    double sum = 0;
    for (std::size_t k = 0; k < mesh.along; ++k)
        sum += field.kelvin[mesh.slot(0, k)];
    return sum / static_cast<double>(mesh.along);
}

double mean_skin(const BossMesh& mesh, const BossField& field) {
    double sum = 0;
    for (std::size_t k = 0; k < mesh.along; ++k)
        sum += field.kelvin[mesh.slot(mesh.across - 1, k)];
    return sum / static_cast<double>(mesh.along);
}

double mean_boss(const BossMesh& mesh, const BossField& field) {
    double sum = 0;
    double volume = 0;
    for (std::size_t at = mesh.first_cell(); at < mesh.past_boss(); ++at) {
        sum += mesh.volume[at] * field.kelvin[at];
        volume += mesh.volume[at];
    }
    return sum / volume;
}

double bore_at(const BossMesh& mesh, const BossField& field, double depth) {
    const double cells = std::clamp(depth / mesh.cell_length - 0.5, 0.0, static_cast<double>(mesh.along - 1));
    if (mesh.along == 1)
        return field.kelvin[mesh.slot(0, 0)];
    const auto k = std::min(static_cast<std::size_t>(cells), mesh.along - 2);
    const double share = cells - static_cast<double>(k);
    return (1 - share) * field.kelvin[mesh.slot(0, k)] + share * field.kelvin[mesh.slot(0, k + 1)];
}

} // namespace ringfill
