#pragma once

#include "../exit_code.hpp"
#include "../options.hpp"

namespace ringfill::cli {

// One command a function; each delivers its result and throws Faulty when it cannot.
void take_command(const Request& request);
void passes_command(const Request& request);
void heat_command(const Request& request);
void boring_command(const Request& request);
void day_command(const Request& request);
void cautions_command(const Request& request);
void quote_command(const Request& request);
void sheet_command(const Request& request);
void check_command(const Request& request);
void materials_command(const Request& request);
void start_command(const Request& request);

/// Plans line by line and goes on after a line that cannot be planned; the status tells of the worst.
ExitCode batch_command(const Request& request);

} // namespace ringfill::cli
