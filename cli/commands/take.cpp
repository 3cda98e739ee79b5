#include <ringfill/document/write.hpp>
#include <ringfill/report/json.hpp>
#include <ringfill/report/take_text.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

void take_command(const Request& request) {
    const Plan plan = planned_job(request);
    deliver(request.json ? write_json(plan_document(plan)) : take_text(plan, style_for(request.output)),
            request.output);
}

} // namespace ringfill::cli
