#include <fmt/format.h>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/format.hpp>
#include <ringfill/report/json/json.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

void check_command(const Request& request) {
    if (!request.schema.empty())
        return deliver(request.schema == "job" ? job_schema() : plan_schema(), request.output);
    const Plan plan = planned_job(request, FamiliesRead::all);
    const std::string name = request.file == "-" ? "standard input" : request.file;
    if (!request.json)
        return deliver(fmt::format("{}: can be planned: bores {}, cautions {}, notes {}\n", printable(name),
                                   plan.bores.size(), plan.cautions.size(), plan.notes.size()),
                       request.output);
    const Value::Object answer = {{"format", "ringfill-check/1"},
                                  {"file", name},
                                  {"plannable", true},
                                  {"bores", static_cast<double>(plan.bores.size())},
                                  {"cautions", static_cast<double>(plan.cautions.size())},
                                  {"notes", static_cast<double>(plan.notes.size())}};
    deliver(write_json(answer), request.output);
}

} // namespace ringfill::cli
