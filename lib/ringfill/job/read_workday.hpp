#pragma once

#include <optional>
#include <string_view>

#include <ringfill/document/entry.hpp>
#include <ringfill/job/workshop.hpp>

namespace ringfill {

/// A time of day such as "7:30" or "07:30", from midnight; nothing when it is none.
std::optional<Time> clock_time(std::string_view text);

/// The working hours of a job; what it leaves out is assumed.
Workday read_workday(const Entry& job);

} // namespace ringfill
