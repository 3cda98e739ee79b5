#pragma once

#include <vector>

#include <ringfill/boring/bore_plan.hpp>
#include <ringfill/take/needs.hpp>

namespace ringfill {

// What the planned bores of a job use, counts applied, in the order of the job.

std::vector<WireUse> wire_uses(const Job& job, const std::vector<GivenBore>& given,
                               const std::vector<BorePlan>& bores);
std::vector<PieceUse> piece_uses(const Job& job, const std::vector<GivenBore>& given,
                                 const std::vector<BorePlan>& bores);
std::vector<GasUse> gas_uses(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores);

/// The temperatures each bore is held between; those of a bore that is stopped are left out.
std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores);

/// Heat from a heater. A run that breaks off gives no figure of fuel that could be loaded: the cautions say
/// so.
std::vector<FuelUse> fuel_uses(const std::vector<BorePlan>& bores);

/// The load of each procedure; a bore without a balance is welded without a stop.
std::vector<PowerUse> power_uses(const std::vector<BorePlan>& bores);

/// What arc, electric heater and boring bar draw.
MainsUse mains_use(const std::vector<BorePlan>& bores, Power bar_drive);

} // namespace ringfill
