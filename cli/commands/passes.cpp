#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/text/passes_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void passes_command(const Request& request) {
    planned_view(request, passes_text, passes_csv);
}

} // namespace ringfill::cli
