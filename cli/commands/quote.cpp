#include <ringfill/fault/printable.hpp>
#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/text/quote_text.hpp>

#include "../terminal.hpp"
#include "commands.hpp"
#include "planned_job.hpp"
#include "planned_view.hpp"
#include "workbook.hpp"

namespace ringfill::cli {
namespace {

std::string in_small_letters(std::string name) {
    for (char& c : name)
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return name;
}

/// Other workbooks than ours would be texts under a wrong name.
void refuse_other_workbook(const std::string& output, const std::string& name) {
    for (const char* ending : {".xls", ".xlsm", ".xlsb", ".ods", ".numbers"})
        if (name.ends_with(ending)) {
            Fault fault = fault_in_file("ringfill", "is no workbook that it writes",
                                        "end the name in .xlsx, or in .csv with --csv");
            fault.value = output;
            throw Faulty(Origin::command_line, std::move(fault));
        }
}

/// A file for a spreadsheet without a quote would be empty.
const Quote& quote_of(const Plan& plan, const Request& request) {
    if (!plan.quote)
        throw Faulty(Origin::job,
                     fault_in_file(request.file == "-" ? "standard input" : request.file,
                                   "has no prices.currency, so there is no quote to write",
                                   "write \"prices\": { \"currency\": \"EUR\" } with your prices"));
    return *plan.quote;
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
    const std::string name = in_small_letters(request.output);
    refuse_other_workbook(request.output, name);
    const bool is_workbook = name.ends_with(".xlsx");
    if (is_workbook)
        refuse_beside_workbook(request);
    else if (!request.csv)
        return planned_view(request, quote_text, quote_csv);
    const Plan plan = planned_job(request);
    const Quote& quote = quote_of(plan, request);
    deliver(is_workbook ? workbook(quote_cells(plan.title, quote)) : quote_csv(plan), request.output);
}

} // namespace ringfill::cli
