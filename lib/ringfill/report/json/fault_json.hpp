#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <ringfill/document/value.hpp>
#include <ringfill/fault/fault.hpp>

namespace ringfill {

/// What stands in place of the plan of a job that was one line of many (ringfill-fault/1): the line, who can
/// put it right (job, table or file; program: nothing of the user's is wrong), and each fault with its path,
/// column, value, reason and remedy, where known, and the whole of it as a sentence.
Value fault_document(std::size_t line, std::optional<Origin> origin, const std::vector<Fault>& faults);

} // namespace ringfill
