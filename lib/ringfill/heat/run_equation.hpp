#pragma once

#include <ringfill/heat/boss_field.hpp>
#include <ringfill/heat/heat_run.hpp>

namespace ringfill {

/// What a run works out step by step. Of iron that is laid cold the boss stands for the whole casting, where
/// its mass is known.
BossEquation equation_of(const HeatRunSettings& settings);

} // namespace ringfill
