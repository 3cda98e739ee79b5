#pragma once

#include <string>

#include <ringfill/plan/plan.hpp>
#include <ringfill/report/text/layout.hpp>

namespace ringfill {

/// "TOTAL without tax": what a total may be called.
std::string total_name(const Quote& quote);
/// ", INCOMPLETE: 2 missing", or nothing.
std::string incomplete_text(const Quote& quote);

/// "12.5 %" of thousandths of a percent.
std::string share_text(ExactShare share);

/// The price of the job, line by line, what is missing first; or that there is none. Under 80 columns.
std::string quote_text(const Plan& plan, const Style& style);

} // namespace ringfill
