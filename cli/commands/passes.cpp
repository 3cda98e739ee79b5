#include <ringfill/document/write.hpp>
#include <ringfill/report/json.hpp>
#include <ringfill/report/passes_csv.hpp>
#include <ringfill/report/passes_text.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

void passes_command(const Request& request) {
    const Plan plan = planned_job(request);
    deliver(request.json  ? write_json(plan_document(plan))
            : request.csv ? passes_csv(plan)
                          : passes_text(plan, style_for(request.output)),
            request.output);
}

} // namespace ringfill::cli
