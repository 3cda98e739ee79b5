#include "planned_view.hpp"

#include <ringfill/document/write.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/report/text/working_text.hpp>

#include "../terminal.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

void planned_view(const Request& request, std::string (*text)(const Plan&, const Style&),
                  std::string (*csv)(const Plan&)) {
    const Plan plan = planned_job(request);
    const Style style = style_for(request.output);
    std::string view;
    if (request.json)
        view = write_json(plan_document(plan));
    else if (request.csv)
        view = csv(plan);
    else
        view = text(plan, style);
    if (request.working && !request.json && !request.csv)
        view += '\n' + working_text(plan, style);
    deliver(view, request.output);
}

} // namespace ringfill::cli
