#pragma once

#include <ringfill/heat/boss_field.hpp>

namespace ringfill {

// Readings of a field [K]. The bore is told by its innermost cells, the skin by the outermost.

double coldest_bore(const BossMesh& mesh, const BossField& field);
double mean_bore(const BossMesh& mesh, const BossField& field);
double mean_skin(const BossMesh& mesh, const BossField& field);
double mean_boss(const BossMesh& mesh, const BossField& field); ///< by volume, without plates
/// The bore at a depth [K]: linear between the centres of its cells, level beyond the last ones.
double bore_at(const BossMesh& mesh, const BossField& field, double depth);

} // namespace ringfill
