#include <ringfill/report/text/heat_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void heat_command(const Request& request) {
    planned_view(request, heat_text, nullptr);
}

} // namespace ringfill::cli
