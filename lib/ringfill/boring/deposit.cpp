#include <ringfill/boring/deposit.hpp>

namespace ringfill {
namespace {

/// The group that the table lists a filler in: by its own name, else by the group that rules know it by.
std::optional<DepositGroup> listed_group(const SuitName& filler, const Cutting& cutting) {
    std::optional<DepositGroup> by_name;
    std::optional<DepositGroup> by_group;
    for (const auto& [name, group] : cutting.deposits) {
        if (name == filler.name)
            by_name = group;
        if (name == filler.group)
            by_group = group;
    }
    return by_name ? by_name : by_group;
}

} // namespace

Deposit deposit_of(const SuitName& filler, const std::optional<Sourced<double>>& hardness,
                   const Cutting& cutting) {
    Deposit deposit;
    if (const auto group = listed_group(filler, cutting)) {
        deposit.is_known = true;
        const bool is_soft = *group == DepositGroup::mild || *group == DepositGroup::low_alloy;
        const bool is_hard = hardness && hardness->value > cutting.hardened_over_HV.value;
        deposit.group = is_soft && is_hard ? DepositGroup::hardened : *group;
    }
    if (hardness && hardness->value > cutting.bored_up_to_HV.value)
        deposit.too_hard = hardness;
    return deposit;
}

std::string_view words_for(DepositGroup group) {
    static constexpr std::string_view words[] = {
        "mild deposit",    "low alloy deposit", "hardened deposit", "austenitic deposit",
        "13 % Mn deposit", "nickel deposit",    "bronze deposit",   "cast iron deposit"}; // as DepositGroup
    return words[static_cast<std::size_t>(group)];
}

bool hardens_under_the_edge(DepositGroup group) {
    return group == DepositGroup::austenitic || group == DepositGroup::manganese ||
           group == DepositGroup::nickel;
}

} // namespace ringfill
