#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

#include "../options.hpp"

namespace ringfill::cli {

/// Plans the job of a request and delivers one view of it: the whole result as JSON, or the view as
/// comma-separated values or as text, with the workings after it if they are asked for.
void planned_view(const Request& request, std::string (*text)(const Plan&, const Style&),
                  std::string (*csv)(const Plan&));

} // namespace ringfill::cli
