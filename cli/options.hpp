#pragma once

#include <optional>
#include <string>
#include <variant>

#include <ringfill/units/show.hpp>

namespace ringfill::cli {

/// What the command line asks for.
struct Request {
    std::string command;
    std::string file;    ///< the job ("-": standard input), where start writes, or the name of a material
    std::string output;  ///< empty: standard output
    std::string tables;  ///< a folder of the user's own tables; empty: none
    std::string plugins; ///< a folder of the user's own plugins; empty: none
    std::string check;   ///< a plugin to try every rule of the interface on; empty: none
    std::string schema;  ///< of what to print one: "job" or "result"; empty: none
    std::optional<UnitSystem> units;
    bool json = false;
    bool csv = false;
    bool working = false;
    bool strict = false; ///< doubts are faults
    bool fields = false;
};

/// A text that answers the command line by itself: help or version.
struct Answer {
    std::string text;
};

/// Reads the command line. Throws Faulty (Origin::command_line).
std::variant<Request, Answer> read_command_line(int argc, const char* const* argv);

} // namespace ringfill::cli
