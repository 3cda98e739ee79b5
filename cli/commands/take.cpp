#include <ringfill/report/csv/plan_csv.hpp>
#include <ringfill/report/text/take_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void take_command(const Request& request) {
    planned_view(request, take_text, take_csv);
}

} // namespace ringfill::cli
