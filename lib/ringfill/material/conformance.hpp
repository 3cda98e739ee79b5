#pragma once

#include <functional>
#include <string>
#include <vector>

#include <ringfill/table/sourced.hpp>

namespace ringfill {

/// One rule of the plugin interface, tried on a plugin.
struct RuleKept {
    std::string rule;
    std::string broken; ///< how, with an example; empty: it was kept
};

/// Told what is tried as it goes, so that a plugin that ends the program can be reported.
struct ConformanceWatch {
    std::function<void(const std::string& rule)> begins = [](const std::string&) {};
    std::function<void(const RuleKept&)> ends = [](const RuleKept&) {};
};

/// Tries every rule of the plugin interface on one plugin: it is loaded, its table is read, and it is asked
/// on each base metal of its table with each filler over a grid of walls, heat inputs and hydrogen, and with
/// each number left out in turn; what it must leave alone in the process is compared before and after. A rule
/// that rests on a broken one is not tried. `sources` is the bibliography of the program. Runs the plugin's
/// code in this process: what the plugin crashes, crashes here.
std::vector<RuleKept> conformance(const std::string& path, const Bibliography& sources,
                                  const ConformanceWatch& watch = {});

} // namespace ringfill
