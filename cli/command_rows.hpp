#pragma once

#include <string_view>
#include <vector>

namespace ringfill::cli {

/// An option, described once; a command lists the ones it takes by name.
struct OptionRow {
    std::string_view names;
    std::string_view value; ///< what follows it; empty: a flag
    std::string_view help;
};

/// A command, described once for the parser, the help, and what is made from them.
struct CommandRow {
    std::string_view name;
    std::string_view word; ///< what follows it
    std::string_view word_help;
    bool word_required;
    std::string_view summary;
    std::string_view more;
    std::vector<std::string_view> options;
};

const std::vector<OptionRow>& option_rows();
const std::vector<CommandRow>& command_rows();

/// What every help ends on.
extern const std::string_view exit_statuses;

} // namespace ringfill::cli
