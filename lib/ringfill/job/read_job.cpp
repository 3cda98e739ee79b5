#include <ringfill/job/read_job.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/description.hpp>
#include <ringfill/job/read_bore.hpp>
#include <ringfill/job/read_prices.hpp>
#include <ringfill/job/read_procedure.hpp>
#include <ringfill/job/read_site.hpp>
#include <ringfill/job/read_workday.hpp>
#include <ringfill/units/factor.hpp>
#include <ringfill/units/measured_field.hpp>

namespace ringfill {
namespace {

/// How bare lengths are read, before anything else is.
UnitSystem read_units(const Entry& entry) {
    const bool inch = entry.word("units") == "inch";
    entry.reading().bare_length = inch ? factor::inch : 1e-3;
    return inch ? UnitSystem::inch : UnitSystem::metric;
}

void read_workshop(Job& job, const Entry& entry) {
    if (const auto site = entry.object("site"))
        job.site = read_site(*site);
    if (const auto torch = entry.object("torch"))
        job.torch = read_record<Torch>(*torch);
    if (const auto heater = entry.object("heater"))
        job.heater = read_record<Heater>(*heater);
    if (const auto boring = entry.object("boring"))
        job.boring = read_record<BoringBar>(*boring);
    if (const auto prices = entry.object("prices"))
        job.prices = read_prices(*prices);
}

/// The bore's procedure exists; with a single procedure it need not be named.
void resolve_procedure(WornBore& bore, const Entry& entry, const std::vector<std::string>& names) {
    if (!entry.has("procedure")) {
        if (names.size() == 1)
            bore.procedure = names.front();
        else if (!names.empty())
            entry.refuse("procedure", "is missing, and there are several", suggest("", names));
        return;
    }
    for (const std::string& name : names)
        if (name == bore.procedure)
            return;
    if (!bore.procedure.empty() && !names.empty())
        entry.refuse("procedure", "is not one of the procedures", suggest(bore.procedure, names));
}

void read_bores(Job& job, const Entry& entry) {
    const auto names = job.procedures | ranges::views::transform([](const Procedure& p) { return p.name; }) |
                       ranges::to<std::vector>();
    for (const Entry& one : entry.objects("bores")) {
        WornBore bore = read_bore(one);
        for (const WornBore& other : job.bores)
            if (!bore.name.empty() && other.name == bore.name)
                one.refuse("name", "is already the name of " + other.path, "give each bore its own name");
        resolve_procedure(bore, one, names);
        job.bores.push_back(std::move(bore));
    }
}

} // namespace

Job read_job(const Document& document) {
    Reading reading{document};
    const Entry entry(reading, document.root, job_record, "");
    Job job;
    if (document.root.object()) {
        entry.word("format");
        job.units = read_units(entry);
        job.title = entry.text("title").value_or("");
        job.reserve = measured_si(entry, "reserve").value_or(0);
        for (const auto& [name, procedure] : entry.named_objects("procedures"))
            job.procedures.push_back(read_procedure(name, procedure));
        read_bores(job, entry);
        read_workshop(job, entry);
        job.workday = read_workday(entry);
    }
    refuse_if_any(Origin::job, reading.faults);
    job.assumed = std::move(reading.assumed);
    return job;
}

void throw_located(const Document& document, const Faulty& faulty) {
    const bool is_of_job = faulty.origin() == Origin::job;
    throw Faulty(faulty.origin(), is_of_job ? locate(document, faulty.faults()) : faulty.faults());
}

void set_paths(Job& job) {
    for (Procedure& procedure : job.procedures)
        procedure.path = member_path("procedures", procedure.name);
    for (std::size_t i = 0; i < job.bores.size(); ++i)
        job.bores[i].path = element_path("bores", i);
}

} // namespace ringfill
