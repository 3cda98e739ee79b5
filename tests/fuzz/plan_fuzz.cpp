#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include <ringfill/document/write.hpp>
#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/csv/quote_cells.hpp>
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

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

void require(bool holds) {
    if (!holds)
        std::abort();
}

/// No number that is none, in no report: the words that a number would leave.
void check_text(const std::string& text) {
    require(!text.empty());
    for (const char* word : {" nan", "-nan", " inf ", "-inf", " -0 "})
        require(text.find(word) == std::string::npos);
}

void print_all(const Job& job, const Plan& planned, const Bibliography& sources) {
    const Style style;
    for (const auto view :
         {take_text, passes_text, heat_text, boring_text, day_text, cautions_text, quote_text, working_text})
        check_text(view(planned, style));
    for (const auto table : {take_csv, passes_csv, boring_csv, quote_csv})
        require(!table(planned).empty());
    require(!sheet(job, planned, sources).empty());
    require(!write_json(plan_document(planned)).empty());
    if (planned.quote)
        require(!quote_cells(planned.title, *planned.quote).rows.empty());
}

} // namespace

/// From a job file to every report: planned in every view, in both unit systems, or refused as Faulty.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const Shop& ready = testing::shop();
    try {
        const Document document =
            parse("job.json", std::string(reinterpret_cast<const char*>(data), size), Origin::job);
        Job job = read_job(document);
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch}) {
            job.units = units;
            print_all(job, plan(job, ready), ready.sources);
        }
    } catch (const Faulty& faulty) {
        require(faulty.origin() == Origin::job && !faulty.faults().empty());
    }
    return 0;
}
