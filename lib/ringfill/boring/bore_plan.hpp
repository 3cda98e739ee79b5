#pragma once

#include <string>

#include <ringfill/boring/bore_boring.hpp>
#include <ringfill/heat/follow_heat.hpp>
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

/// The name of one of several alike, "arm root 2"; a bore of its own has the name of the bore.
inline std::string piece_name(const BorePlan& bore, int piece) {
    return bore.count > 1 ? bore.name + ' ' + std::to_string(piece) : bore.name;
}

} // namespace ringfill
