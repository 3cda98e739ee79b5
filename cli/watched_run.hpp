#pragma once

#include <functional>
#include <string>
#include <vector>

#include "exit_code.hpp"

namespace ringfill::cli {

/// Runs a command in a process of its own and waits for it, so that a plugin that ends that process, or puts
/// another program in its place, is named instead of an output that is silently missing. Its exit status is
/// the command's; broken_table when a plugin has ended it, or taken a standard stream away. What asks this
/// process to end is passed on. Throws std::system_error when no process can be had.
/// @param plugins files of others that the command may load; not empty
/// @param command must not throw
ExitCode run_watched(const std::vector<std::string>& plugins, const std::function<ExitCode()>& command);

} // namespace ringfill::cli
