#include <ringfill/fault/printable.hpp>
#include <ringfill/report/quote_csv.hpp>
#include <ringfill/report/quote_text.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"
#include "planned_view.hpp"
#include "workbook.hpp"

namespace ringfill::cli {
namespace {

bool is_workbook(std::string name) {
    for (char& c : name)
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return name.ends_with(".xlsx");
}

/// A workbook holds the quote alone.
void refuse_beside_workbook(const Request& request) {
    const char* const option = request.json      ? "--json"
                               : request.csv     ? "--csv"
                               : request.working ? "--working"
                                                 : nullptr;
    if (!option)
        return;
    Fault fault = fault_in_file("ringfill", "stands beside a workbook for -o",
                                "leave it out, or choose a name that does not end in .xlsx");
    fault.value = option;
    throw Faulty(Origin::command_line, std::move(fault));
}

} // namespace

void quote_command(const Request& request) {
    if (!is_workbook(request.output))
        return planned_view(request, quote_text, quote_csv);
    refuse_beside_workbook(request);
    const Plan plan = planned_job(request);
    if (!plan.quote) {
        Fault fault = fault_in_file(request.file == "-" ? "standard input" : request.file,
                                    "has no prices.currency, so there is no quote to write",
                                    "write \"prices\": { \"currency\": \"EUR\" } with your prices");
        throw Faulty(Origin::job, std::move(fault));
    }
    deliver(workbook(quote_cells(plan.title, *plan.quote)), request.output);
}

} // namespace ringfill::cli
