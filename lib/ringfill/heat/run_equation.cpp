#include <ringfill/heat/run_equation.hpp>

#include <algorithm>
#include <utility>

#include <ringfill/heat/boss_balance.hpp>
#include <ringfill/heat/surface_loss.hpp>

namespace ringfill {

BossEquation equation_of(const HeatRunSettings& settings) {
    BossMesh mesh = boss_mesh(settings.boss);
    const double wrap = blanket_W_mK / settings.blanket.value();
    if (settings.by_stitches) {
        const double boss = boss_mass(BossEquation(mesh, settings.metal, settings.ambient, wrap));
        stand_for(mesh, std::max(1.0, settings.part.value() / boss));
    }
    return BossEquation(std::move(mesh), settings.metal, settings.ambient, wrap);
}

} // namespace ringfill
