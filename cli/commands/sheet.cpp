#include <ringfill/report/page/sheet.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

void sheet_command(const Request& request) {
    const PlannedJob planned = plan_with_job(request);
    deliver(sheet(planned.job, planned.plan, planned.sources), request.output);
}

} // namespace ringfill::cli
