#pragma once

#include <map>
#include <string>
#include <vector>

#include <ringfill/plan/plan.hpp>
#include <ringfill/take/take_holes.hpp>
#include <ringfill/take/take_sticks.hpp>
#include <ringfill/take/uses.hpp>
#include <ringfill/weld/settings.hpp>

namespace ringfill {

/// What all bores use of each wire, in the order of the job, counts applied.
std::vector<WireUse> wire_uses(const Job& job, const std::vector<GivenBore>& given,
                               const std::vector<BorePlan>& bores);

/// What all bores use of each electrode and rod, likewise.
std::vector<PieceUse> piece_uses(const Job& job, const std::vector<GivenBore>& given,
                                 const std::vector<BorePlan>& bores);

/// The holes that open into the bores, by bore and diameter, counts applied.
std::vector<HoleUse> hole_uses(const Job& job);

/// The temperatures each bore is held between; those of a bore that is stopped are left out.
std::vector<StickUse> stick_uses(const std::vector<BorePlan>& bores);

/// What all bores use of each shielding gas, likewise.
std::vector<GasUse> gas_uses(const std::vector<GivenBore>& given, const std::vector<BorePlan>& bores);

} // namespace ringfill
