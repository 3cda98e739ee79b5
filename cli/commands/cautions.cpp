#include <ringfill/report/text/cautions_text.hpp>

#include "commands.hpp"
#include "planned_view.hpp"

namespace ringfill::cli {

void cautions_command(const Request& request) {
    planned_view(request, cautions_text, nullptr);
}

} // namespace ringfill::cli
