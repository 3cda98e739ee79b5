#pragma once

#include <optional>
#include <string>
#include <vector>

#include <ringfill/fault/fault.hpp>
#include <ringfill/material/family.hpp>

namespace ringfill {

/// Wire feed at a current by linear interpolation in the wire's table [m/s]; never extrapolated: outside it
/// nothing comes back and a fault that prints the range is noted.
std::optional<Speed> feed_in_table(Current current, const WireSize& size, const std::string& path,
                                   std::vector<Fault>& faults);

/// Current at a wire feed, likewise [A].
std::optional<Current> current_in_table(Speed feed, const WireSize& size, const std::string& path,
                                        std::vector<Fault>& faults);

} // namespace ringfill
