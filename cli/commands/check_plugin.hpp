#pragma once

#include "../options.hpp"

namespace ringfill::cli {

/// Tries every rule of the plugin interface on the plugin that --check names, in a process of its own, and
/// delivers one line a rule. Throws Faulty: Origin::table when one is broken, Origin::file when there is no
/// such file.
void check_plugin(const Request& request);

} // namespace ringfill::cli
