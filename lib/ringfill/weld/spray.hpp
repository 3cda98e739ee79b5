#pragma once

#include <optional>
#include <string>
#include <utility>

#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/table/gases.hpp>

namespace ringfill {

/// The currents from which a wire sprays in a gas: it may from the first, it does from the second [A].
struct SprayFrom {
    Current may;
    Current does;
    std::string source;
};

/// The printed least current of a diameter, times what the gas asks for. Nothing: not known for that wire, or
/// no wire sprays in that gas. @param gas may be null: the printed current.
std::optional<SprayFrom> spray_from(const WireSize& size, const Gas* gas);

/// Whether the transfer that a job names is the one there is: not spray in a gas that does not let a wire
/// spray, nor at a current under the one that surely sprays. A current that is not known counts as the job's
/// word.
bool transfer_holds(const Procedure& procedure, const WireSize& size, const Gas* gas,
                    const std::optional<Current>& current);

} // namespace ringfill
