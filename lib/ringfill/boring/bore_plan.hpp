#pragma once

#include <string>
#include <vector>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/document/assumed.hpp>
#include <ringfill/heat/heat_balance.hpp>
#include <ringfill/weld/bore_metals.hpp>

namespace ringfill {

/// What is worked out for one bore without following its heat; each figure is for one of its count.
struct BoreFigures : BoreWeld, BoreMetals {
    BoreHeat heat;
    BoringPlan boring;
};

/// Everything worked out for one bore; each figure is for one of its count, its metal with a start after each
/// break that the heat asks for.
struct BorePlan : BoreFigures, FollowedHeat {};

/// The values of the cutting table that a job is planned with because it leaves them out, or cannot give
/// them, for each deposit once. The standing times stand in the plan one by one.
std::vector<Assumed> assumed_cutting(const std::vector<BorePlan>& bores, UnitSystem units);

/// The name of one of several alike, "arm root 2"; a bore of its own has the name of the bore.
inline std::string piece_name(const BorePlan& bore, int piece) {
    return bore.count > 1 ? bore.name + ' ' + std::to_string(piece) : bore.name;
}

} // namespace ringfill
