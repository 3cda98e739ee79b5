#include <ringfill/report/text/day_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void day_command(const Request& request) {
    planned_view(request, day_text, nullptr);
}

} // namespace ringfill::cli
