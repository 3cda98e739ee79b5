#include <ringfill/ringfill.hpp>

#include <utility>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/job/read_job.hpp>
#include <ringfill/plan/plan.hpp>
#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/json/json.hpp>
#include <ringfill/report/page/sheet.hpp>
#include <ringfill/report/text/boring_text.hpp>
#include <ringfill/report/text/cautions_text.hpp>
#include <ringfill/report/text/day_text.hpp>
#include <ringfill/report/text/heat_text.hpp>
#include <ringfill/report/text/passes_text.hpp>
#include <ringfill/report/text/quote_text.hpp>
#include <ringfill/report/text/take_text.hpp>
#include <ringfill/report/text/working_text.hpp>

namespace ringfill {
namespace {

Document document_of(const std::string& file) {
    return parse(file == "-" ? "standard input" : file, read_whole(file, job_file_limit), Origin::job);
}

Planned planned_of(const Document& document, const SharedShop& shop, const RunBlocks& run_blocks) {
    Job job = read_job(document);
    try {
        return plan(std::move(job), shop, run_blocks);
    } catch (const Faulty& faulty) {
        throw_located(document, faulty);
    }
}

} // namespace

SharedShop read_shop(const std::vector<std::string>& table_folders,
                     const std::vector<std::string>& plugin_folders) {
    return std::make_shared<const Shop>(read_shop(Shelf{table_folders}, plugin_folders));
}

Job read_job(const std::string& file) {
    return read_job(document_of(file));
}

Job read_job_text(const std::string& name, std::string text) {
    return read_job(parse(name, std::move(text), Origin::job));
}

Planned plan(Job job, const SharedShop& shop, const RunBlocks& run_blocks) {
    set_paths(job);
    auto planned = std::make_shared<const Plan>(plan(job, *shop, {}, run_blocks));
    return {std::move(job), shop, std::move(planned)};
}

Planned plan_file(const std::string& file, const SharedShop& shop, const RunBlocks& run_blocks) {
    return planned_of(document_of(file), shop, run_blocks);
}

Planned plan_text(const std::string& name, std::string text, const SharedShop& shop,
                  const RunBlocks& run_blocks) {
    return planned_of(parse(name, std::move(text), Origin::job), shop, run_blocks);
}

std::string take_text(const Planned& planned) {
    return take_text(*planned.plan, Style());
}
std::string passes_text(const Planned& planned) {
    return passes_text(*planned.plan, Style());
}
std::string heat_text(const Planned& planned) {
    return heat_text(*planned.plan, Style());
}
std::string boring_text(const Planned& planned) {
    return boring_text(*planned.plan, Style());
}
std::string day_text(const Planned& planned) {
    return day_text(*planned.plan, Style());
}
std::string quote_text(const Planned& planned) {
    return quote_text(*planned.plan, Style());
}
std::string cautions_text(const Planned& planned) {
    return cautions_text(*planned.plan, Style());
}
std::string working_text(const Planned& planned) {
    return working_text(*planned.plan, Style());
}

std::string take_csv(const Planned& planned) {
    return take_csv(*planned.plan);
}
std::string passes_csv(const Planned& planned) {
    return passes_csv(*planned.plan);
}
std::string boring_csv(const Planned& planned) {
    return boring_csv(*planned.plan);
}
std::string quote_csv(const Planned& planned) {
    return quote_csv(*planned.plan);
}

std::string plan_json(const Planned& planned) {
    return write_json(plan_document(*planned.plan));
}

std::string sheet(const Planned& planned) {
    Bibliography sources = planned.shop->sources;
    for (const Family& family : families_of(planned.job, planned.shop->registry))
        sources.insert(family.sources.begin(), family.sources.end());
    return sheet(planned.job, *planned.plan, sources);
}

} // namespace ringfill
