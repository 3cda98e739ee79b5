#include <ringfill/heat/follow_heat.hpp>

namespace ringfill {

FollowedHeat follow_heat(const BalanceCase& bore) {
    auto found = heat_balance(bore);
    if (auto* balance = std::get_if<HeatBalance>(&found))
        return {std::move(*balance), {}};
    return {std::nullopt, std::get<std::string>(std::move(found))};
}

std::vector<std::vector<RingPass>> if_followed(std::vector<std::vector<RingPass>> bores) {
    std::size_t rings = 0;
    for (const auto& passes : bores)
        for (const RingPass& pass : passes)
            rings += pass.rings.size();
    if (rings > most_rings_of_a_job)
        bores.assign(bores.size(), {});
    return bores;
}

} // namespace ringfill
