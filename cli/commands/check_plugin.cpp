#include "check_plugin.hpp"

#include <algorithm>
#include <filesystem>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/printable.hpp>

#include "../table_folder.hpp"
#include "../terminal.hpp"
#include "plugin_trial.hpp"

namespace ringfill::cli {
namespace {

constexpr std::size_t longest_line = 1'000;

/// What must hold of the process as a whole, as rules like the others.
RuleKept comes_back(const PluginTrial& trial) {
    RuleKept rule{"comes back from every call", {}};
    if (!trial.ended_early.empty())
        rule.broken = fmt::format("{} while: {}", trial.ended_early,
                                  trial.during.empty() ? "the program ended" : trial.during);
    return rule;
}

RuleKept prints_nothing(const PluginTrial& trial) {
    RuleKept rule{"prints nothing", {}};
    if (!trial.printed.empty())
        rule.broken = fmt::format("printed {} to standard output", in_quotes(trial.printed));
    else if (!trial.complained.empty())
        rule.broken = fmt::format("printed {} to standard error", in_quotes(trial.complained));
    return rule;
}

std::string line_of(const RuleKept& rule) {
    return rule.broken.empty()
               ? fmt::format("{}: kept\n", rule.rule)
               : fmt::format("{}: broken: {}\n", rule.rule, printable(rule.broken, longest_line));
}

} // namespace

void check_plugin(const Request& request) {
    std::error_code error;
    if (!std::filesystem::exists(request.check, error))
        throw Faulty(Origin::file,
                     fault_in_file(request.check, "is not there", "check the name of the plugin"));
    PluginTrial trial =
        try_plugin(request.check, read_sources(table_files(shelf_for(request.tables), "sources.json")));
    trial.rules.push_back(comes_back(trial));
    trial.rules.push_back(prints_nothing(trial));
    std::string text;
    for (const RuleKept& rule : trial.rules)
        text += line_of(rule);
    deliver(text, request.output);
    const auto broken = std::count_if(trial.rules.begin(), trial.rules.end(),
                                      [](const RuleKept& rule) { return !rule.broken.empty(); });
    if (broken > 0)
        throw Faulty(
            Origin::table,
            fault_in_file(request.check,
                          fmt::format("breaks {} of the {} rules of the plugin interface that were tried",
                                      broken, trial.rules.size()),
                          "put right what the list tells"));
}

} // namespace ringfill::cli
