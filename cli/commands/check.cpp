#include <fmt/format.h>

#include <ringfill/document/write.hpp>
#include <ringfill/fault/listed.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/format.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/say/heat_limits.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"

namespace ringfill::cli {

namespace {

std::string doubts_of(const Plan& plan) {
    return listed(plan.doubts, "", [](const Doubt& doubt) { return "DOUBT " + to_string(doubt) + "\n"; });
}

std::string replaced_of(const Plan& plan) {
    return listed(replaced_in_words(plan.tables), "", [](const std::string& line) { return line + "\n"; });
}

/// What each bore is read as, to hold against the drawing: no rule sees a wrong figure that is possible.
std::string sizes_of(const Job& job) {
    return listed(job.bores, "", [&](const WornBore& bore) {
        const auto shown = [&](Length length) { return show(length, job.units); };
        return fmt::format("{}: finish {}, length {}, boss {}\n", printable(bore.name, 60),
                           shown(bore.finish_diameter), shown(bore.length),
                           bore.boss_diameter ? shown(*bore.boss_diameter) : "not said");
    });
}

} // namespace

void check_command(const Request& request) {
    if (!request.schema.empty())
        return deliver(request.schema == "job" ? job_schema() : plan_schema(), request.output);
    const auto [job, plan, sources] = plan_with_job(request, FamiliesRead::all);
    const std::string name = request.file == "-" ? "standard input" : request.file;
    if (!request.json)
        return deliver(fmt::format("{}: can be planned: bores {}, doubts {}, cautions {}, notes {}\n{}{}{}",
                                   printable(name), plan.bores.size(), plan.doubts.size(),
                                   plan.cautions.size(), plan.notes.size(), doubts_of(plan),
                                   replaced_of(plan), sizes_of(job)),
                       request.output);
    const Value::Object answer = {{"format", "ringfill-check/1"},
                                  {"file", name},
                                  {"plannable", true},
                                  {"bores", static_cast<double>(plan.bores.size())},
                                  {"doubts", static_cast<double>(plan.doubts.size())},
                                  {"tables", static_cast<double>(plan.tables.size())},
                                  {"cautions", static_cast<double>(plan.cautions.size())},
                                  {"notes", static_cast<double>(plan.notes.size())}};
    deliver(write_json(answer), request.output);
}

} // namespace ringfill::cli
