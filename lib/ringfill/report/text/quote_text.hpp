#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// The price of the job, line by line, what is missing first; or that there is none. Under 80 columns.
std::string quote_text(const Plan& plan, const Style& style);

} // namespace ringfill
