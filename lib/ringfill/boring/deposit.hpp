#pragma once

#include <optional>

#include <ringfill/table/cutting.hpp>
#include <ringfill/table/suits.hpp>

namespace ringfill {

/// What the weld of a bore is to the edge that cuts it.
struct Deposit {
    DepositGroup group = DepositGroup::hardened;
    bool is_known = false;                   ///< else no table names the filler, and it is cut as hardened
    std::optional<Sourced<double>> too_hard; ///< its hardness [HV], where it is not bored but ground
};

/// The deposit that a filler lays: its own name in the table of cutting goes before its group; a mild or low
/// alloy one that its hardness takes over 350 HV is hardened (section 11).
/// @param hardness as welded [HV]; nothing: not known.
Deposit deposit_of(const SuitName& filler, const std::optional<Sourced<double>>& hardness,
                   const Cutting& cutting);

/// "13 % Mn deposit"
std::string_view words_for(DepositGroup group);

/// Whether it hardens under an edge that only rubs: austenitic, 13 % Mn and nickel deposits.
bool hardens_under_the_edge(DepositGroup group);

} // namespace ringfill
