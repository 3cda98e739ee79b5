#pragma once

#include <ringfill/material/abi.h>

/// The rules of the steel family. On `preheat`: the carbon equivalents of the base metal and, in this order,
/// EN 1011-2 method B, Table C.1, the AWS D1.1 hydrogen-control annex and Séférian. On `advice`: soak, slow
/// and the wait before the crack test; none for a base metal that is no ferritic
/// steel. A value that cannot be is refused by its name.
extern "C" rf_status steel_answer(const rf_sink* sink, const rf_question* question) noexcept;
