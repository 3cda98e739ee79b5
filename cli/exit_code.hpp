#pragma once

#include <ringfill/fault/fault.hpp>

namespace ringfill::cli {

/// The program's exit statuses, as --help and the README list them.
enum ExitCode : int {
    planned = 0,     ///< planned; notes and cautions included
    unplannable = 1, ///< the job cannot be planned as written
    wrong_command = 2,
    broken_table = 3,
    file_trouble = 4,
    our_fault = 70,
    interrupted = 130, ///< asked to end before the last line
};

inline ExitCode exit_code_of(Origin origin) {
    switch (origin) {
    case Origin::job:
        return unplannable;
    case Origin::command_line:
        return wrong_command;
    case Origin::table:
        return broken_table;
    case Origin::file:
        return file_trouble;
    }
    return our_fault;
}

} // namespace ringfill::cli
