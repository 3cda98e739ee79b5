#include "request_rules.hpp"

#include <algorithm>
#include <filesystem>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>

#include "command_rows.hpp"

namespace ringfill::cli {
namespace {

/// Words that each stand well alone, and not together.
void check_words(const Request& request, bool has_no_job) {
    if (request.command.empty())
        refuse({}, "no command was given", "see ringfill --help");
    if (request.working && request.csv)
        refuse("--working", "stands beside --csv", "leave one out; --json holds the workings");
    if (request.json && request.csv)
        refuse("--csv", "stands beside --json", "choose one of the two");
    const bool asks_schema = !request.schema.empty();
    if (asks_schema && request.schema != "job" && request.schema != "result")
        refuse(in_quotes(request.schema), "names no schema", "write job or result");
    if (asks_schema && !request.file.empty())
        refuse(in_quotes(request.file), "stands beside --schema", "leave one out");
    if (has_no_job && !asks_schema)
        refuse_without_job(request.command);
    if (request.command != "start" && request.command != "materials" && !asks_schema && request.file.empty())
        refuse("\"\"", "names no file", "write the name of the job file, or - for standard input");
    if (!request.check.empty() && !request.file.empty())
        refuse(in_quotes(request.file), "stands beside --check", "leave one out");
}

/// A name that ends in another format than the one asked for: what opens it would be led astray.
void check_ending(const Request& request) {
    const std::string ending = std::filesystem::path(request.output).extension().string();
    const std::string_view asked = request.json ? ".json" : request.csv ? ".csv" : "";
    for (const std::string_view other : {".json", ".csv", ".html", ".txt"})
        if (!asked.empty() && ending == other && other != asked)
            refuse(in_quotes(request.output),
                   fmt::format("ends in {}, and --{} was asked for", other, asked.substr(1)),
                   fmt::format("end the name in {}, or leave the option out", asked));
}

} // namespace

[[noreturn]] void refuse(std::string value, std::string reason, std::string remedy) {
    Fault fault = fault_in_file("ringfill", std::move(reason), std::move(remedy));
    fault.value = std::move(value);
    throw Faulty(Origin::command_line, std::move(fault));
}

[[noreturn]] void refuse_without_job(const std::string& command) {
    const bool many = command == "batch";
    refuse(command, many ? "needs a file of jobs" : "needs a job file",
           fmt::format("write ringfill {} {}, or - for standard input", command, many ? "FILE" : "JOB"));
}

std::vector<std::string> with_default_command(std::vector<std::string> words) {
    if (words.empty())
        return {"--help"};
    std::vector<std::string> commands;
    for (const CommandRow& row : command_rows())
        commands.emplace_back(row.name);
    const std::string& first = words.front();
    const bool is_command = std::find(commands.begin(), commands.end(), first) != commands.end();
    std::error_code ignored;
    if (is_command || (first.starts_with("-") && first != "-"))
        return words;
    if (first != "-" && !std::filesystem::exists(first, ignored) &&
        first.find_first_of("./") == std::string::npos)
        refuse(in_quotes(first), "is not a command", suggest(first, commands));
    words.insert(words.begin(), "take");
    return words;
}

void judge_request(Request& request, bool has_no_job) {
    check_words(request, has_no_job);
    for (std::string* name : {&request.output, &request.file})
        if (*name == "-" && (name == &request.output || request.command == "start"))
            name->clear(); // - is standard output where a result goes
    if (request.output.empty())
        return;
    check_ending(request);
    std::error_code ignored;
    for (const auto& [file, what] : {std::pair{&request.file, "job file"}, {&request.check, "plugin"}})
        if (std::filesystem::equivalent(*file, request.output, ignored))
            refuse(in_quotes(request.output), fmt::format("is the {} itself and would be overwritten", what),
                   "choose another name for -o");
}

} // namespace ringfill::cli
