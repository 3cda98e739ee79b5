#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/heat/heat_balance.hpp>

namespace ringfill {

/// The heat of a bore from the first flame to cold, or why it is not followed.
struct FollowedHeat {
    std::optional<HeatBalance> heat_balance;
    std::string no_balance; ///< why there is none, the end of a sentence

    int breaks() const { return heat_balance ? heat_balance->breaks() : 0; } ///< of the arc
};

/// More rings than this in all bores together (each bore once) are not followed one by one, in no bore.
inline constexpr std::size_t most_rings_of_a_job = 100'000;

FollowedHeat follow_heat(const BalanceCase& bore);

/// The rings of all bores where they are few enough to be followed one by one in one job; else none of any.
std::vector<std::vector<RingPass>> if_followed(std::vector<std::vector<RingPass>> bores);

} // namespace ringfill
