#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/text/boring_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void boring_command(const Request& request) {
    planned_view(request, boring_text, boring_csv);
}

} // namespace ringfill::cli
