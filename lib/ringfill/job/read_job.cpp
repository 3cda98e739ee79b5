#include <ringfill/job/read_job.hpp>

#include <range/v3/algorithm/adjacent_find.hpp>
#include <range/v3/algorithm/contains.hpp>
#include <range/v3/algorithm/sort.hpp>
#include <range/v3/algorithm/stable_sort.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/job/description.hpp>
#include <ringfill/job/own_fields.hpp>
#include <ringfill/units/factor.hpp>

namespace ringfill {
namespace {

/// Where an assumed value stands in the list of them: the reserve first, the working day last.
int place_of(const Assumed& assumed) {
    if (assumed.path == "reserve")
        return 0;
    constexpr std::string_view of_the_day[] = {"start", "working_day", "breaks", "change_over"};
    return ranges::contains(of_the_day, assumed.path) ? 2 : 1;
}

/// Notes objects with two members of one name, which a job made by hand may have and no file has.
void refuse_twins(const Value& value, const std::string& path, std::vector<Fault>& faults) {
    if (const Value::List* list = value.list())
        for (std::size_t i = 0; i < list->size(); ++i)
            refuse_twins((*list)[i], element_path(path, i), faults);
    if (!value.object())
        return;
    for (const Member& member : *value.object())
        refuse_twins(member.value, member_path(path, member.name), faults);
    auto names = *value.object() | ranges::views::transform(&Member::name) | ranges::to<std::vector>();
    ranges::sort(names);
    if (ranges::adjacent_find(names) != names.end())
        faults.push_back(fault_at_path(path, {}, "has two of the same name", "give each a name of its own"));
}

} // namespace

Job read_job(const Document& document) {
    Reading reading{document};
    const Value* units = document.root.find("units");
    const bool inch = units && units->text() && *units->text() == "inch";
    reading.bare_length = inch ? factor::inch : 1e-3;
    const Entry entry(reading, document.root, job_record);
    Job job;
    if (document.root.object()) {
        entry.text(entry.field("format"));
        fill_record(job, entry);
    }
    refuse_if_any(Origin::job, reading.faults);
    ranges::stable_sort(reading.assumed, {}, place_of);
    job.assumed = std::move(reading.assumed);
    job.typed_oddly = typed_oddly(document);
    return job;
}

void judge_job(const Job& job) {
    static const Document none;
    Reading reading{.document = none, .by_hand = true};
    const Value value = record_value(job_record, &job);
    Job read_back;
    fill_record(read_back, Entry(reading, value, job_record));
    refuse_twins(value, "", reading.faults);
    refuse_if_any(Origin::job, reading.faults);
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
