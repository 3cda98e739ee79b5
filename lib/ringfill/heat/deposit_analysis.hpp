#pragma once

#include <string>

#include <ringfill/job/procedure.hpp>
#include <ringfill/material/filler.hpp>
#include <ringfill/weld/dilution.hpp>

namespace ringfill {

/// What the undiluted weld metal holds, and how that is known.
struct DepositAnalysis {
    Shares shares;
    std::string known_by; ///< "measured", "usual", "the middle of its class", "the limits of its class"
    /// Why it has no say in a rule for ferritic weld metal; empty: it has.
    std::string left_out;
};

/// The analysis of the job if it gives one, else the filler's usual deposit; of solid wire and rods without
/// one the middle of what the class prints (a maximum alone stands), its Mn burnt off under the gas (0.85
/// under M20 and M21, 0.75 under C1, else 0.90) and its C at most 0.12 % [memory]; of sticks and cored wire
/// their limits, which are the deposit's. Hardfacing, austenitic, nickel and other deposits that are no
/// low-alloy steel are left out: what a filler asks for itself stands in its own row.
DepositAnalysis deposit_analysis(const Procedure& procedure, const Filler& filler);

} // namespace ringfill
