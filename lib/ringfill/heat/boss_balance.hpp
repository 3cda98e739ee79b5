#pragma once

#include <ringfill/heat/boss_field.hpp>

namespace ringfill {

/// What takes a boss's heat: its faces, the machine, and what flows into its plates or back [W].
double outflow(const BossEquation& equation, const BossField& field, const BossLoad& load);

/// What a kelvin more of the boss takes, without its plates, Σ m c(T) [J/K].
double capacity(const BossEquation& equation, const BossField& field);

/// Mass of the boss without its plates [kg].
double boss_mass(const BossEquation& equation);

} // namespace ringfill
