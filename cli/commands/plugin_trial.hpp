#pragma once

#include <string>
#include <vector>

#include <ringfill/material/conformance.hpp>

namespace ringfill::cli {

/// What became of a plugin that was tried in a process of its own.
struct PluginTrial {
    std::vector<RuleKept> rules; ///< those that were tried to their end
    std::string during;          ///< the rule that was being tried when the process ended early
    std::string ended_early;     ///< how: "ended by signal 11 (Segmentation fault)"; empty: it did not
    std::string printed;         ///< to standard output, its beginning
    std::string complained;      ///< to standard error, likewise
};

/// Tries a plugin in a child process with a limit of time for each call, so that one that crashes, exits or
/// loops is reported. Throws std::runtime_error when no process can be had, or for a fault of our own in it.
PluginTrial try_plugin(const std::string& file, const Bibliography& sources);

} // namespace ringfill::cli
