#include "planned_job.hpp"

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/job/read_job.hpp>

#include "../cores.hpp"
#include "../progress_line.hpp"
#include "../table_folder.hpp"

namespace ringfill::cli {

namespace {

void refuse_doubts(const Plan& plan) {
    std::vector<Fault> faults;
    for (const Doubt& doubt : plan.doubts)
        faults.push_back(fault_at_path(doubt.field, doubt.value, "looks mistyped: usual is " + doubt.usual,
                                       doubt.like.empty() ? "check it, or plan without --strict"
                                                          : fmt::format("was {} meant?", doubt.like)));
    refuse_if_any(Origin::job, faults);
}

} // namespace

std::pair<Job, Plan> plan_of(const Document& document, const Request& request, const Shop& shop,
                             const Progress& progress, const RunBlocks& run_blocks) {
    Job job = read_job(document);
    if (request.units)
        job.units = *request.units;
    try {
        Plan planned = plan(job, shop, progress, run_blocks);
        if (request.strict)
            refuse_doubts(planned);
        return {std::move(job), std::move(planned)};
    } catch (const Faulty& faulty) {
        throw_located(document, faulty);
    }
}

PlannedJob plan_with_job(const Request& request, FamiliesRead read) {
    const std::string name = request.file == "-" ? "standard input" : request.file;
    const Document document = parse(name, read_whole(request.file, job_file_limit), Origin::job);
    const Shop shop = read_shop(shelf_for(request.tables), plugin_folders(request.plugins));
    if (read == FamiliesRead::all)
        (void)shop.registry.families();
    ProgressLine line;
    auto [job, planned] = plan_of(
        document, request, shop,
        [&](std::string_view what, std::size_t at, std::size_t of) { line.show(what, at, of); },
        on_threads(usable_cores()));
    Bibliography sources = shop.sources;
    for (const Family& family : families_of(job, shop.registry))
        sources.insert(family.sources.begin(), family.sources.end());
    return {std::move(job), std::move(planned), std::move(sources)};
}

Plan planned_job(const Request& request, FamiliesRead read) {
    return plan_with_job(request, read).plan;
}

} // namespace ringfill::cli
