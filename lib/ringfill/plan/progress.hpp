#pragma once

#include <cstddef>
#include <functional>
#include <string_view>

namespace ringfill {

/// Told how far a long plan is: what is worked on, which of how many. It is called for every bore, so it must
/// be quick; it changes nothing of the plan. May be empty.
using Progress = std::function<void(std::string_view what, std::size_t at, std::size_t of)>;

} // namespace ringfill
