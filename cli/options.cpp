#include "options.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <map>
#include <vector>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/version.hpp>

namespace ringfill::cli {
namespace {

/// Every option, once. A command lists the ones it takes by name.
struct OptionRow {
    std::string_view names;
    std::string_view value; ///< empty: a flag
    std::string_view help;
};

constexpr std::array option_rows = {
    OptionRow{"--json", "", "print the whole result as JSON (ringfill-plan/1)"},
    OptionRow{"-o,--output", "FILE", "write to FILE: beside it first, then renamed over it"},
    OptionRow{"--units", "mm|inch", "show in these units instead of the job's"},
    OptionRow{"--tables", "DIR", "your own tables; their entries add to or correct ours"},
    OptionRow{"--fields", "", "list every field of a job file: kind, range, default, meaning"},
};

struct CommandRow {
    std::string_view name;
    std::string_view file;
    bool file_required;
    std::string_view summary;
    std::string_view more;
    std::vector<std::string_view> options;
};

const std::vector<CommandRow>& command_rows() {
    static const std::vector<CommandRow> rows = {
        {"take",
         "JOB",
         true,
         "what to take in the van: wire, gas, torch parts, and why",
         "Reads a job file (- for standard input) and prints what to load, bore by bore figures, cautions, "
         "notes and "
         "the values it assumed. This is what `ringfill JOB` does too.\n\nExample: ringfill take job.json "
         "--units inch",
         {"--json", "-o,--output", "--units", "--tables"}},
        {"check",
         "JOB",
         true,
         "read and judge a job file only",
         "Prints every fault of the file with its line, and exits with 1 if it cannot be planned as "
         "written.\n\n"
         "Example: ringfill check job.json && ringfill take job.json",
         {"--json", "-o,--output", "--tables"}},
        {"start",
         "FILE",
         false,
         "write a commented starter job",
         "Writes a job that plans as it stands, with every optional field shown once as a comment, to FILE "
         "or to "
         "standard output. A file that exists is not touched.\n\nExample: ringfill start job.json",
         {"--fields", "--units"}},
    };
    return rows;
}

constexpr std::string_view exit_statuses = "Exit status: 0 planned, notes and cautions included; 1 the job "
                                           "cannot be planned as written; 2 the command line "
                                           "is wrong; 3 a table is broken; 4 a file cannot be read or "
                                           "written; 70 a fault of the program. A reader that closes "
                                           "the pipe early (| head) is no fault.\n\nPlans only: local codes, "
                                           "the approved welding procedure and licensed "
                                           "practice rule over everything printed.";

[[noreturn]] void refuse(std::string value, std::string reason, std::string remedy) {
    Fault fault = fault_in_file("ringfill", std::move(reason), std::move(remedy));
    fault.value = std::move(value);
    throw Faulty(Origin::command_line, std::move(fault));
}

void add_option(CLI::App& command, const OptionRow& row, Request& request) {
    const std::string names(row.names);
    const std::string help(row.help);
    if (row.names == "--json")
        command.add_flag(names, request.json, help);
    else if (row.names == "--fields")
        command.add_flag(names, request.fields, help);
    else if (row.names == "--units")
        command
            .add_option_function<std::string>(
                names,
                [&request](const std::string& word) {
                    if (word != "mm" && word != "inch")
                        refuse(in_quotes(word), "is not a unit system for --units", "write mm or inch");
                    request.units = word == "inch" ? UnitSystem::inch : UnitSystem::metric;
                },
                help)
            ->type_name(std::string(row.value));
    else
        command.add_option(names, row.names == "--tables" ? request.tables : request.output, help)
            ->type_name(std::string(row.value));
}

void add_command(CLI::App& app, const CommandRow& row, Request& request) {
    CLI::App* command = app.add_subcommand(std::string(row.name), std::string(row.summary));
    command->add_option(std::string(row.file), request.file)->type_name("")->required(row.file_required);
    for (const std::string_view names : row.options)
        for (const OptionRow& option : option_rows)
            if (option.names == names)
                add_option(*command, option, request);
    command->footer("\n" + std::string(row.more) + "\n\n" + std::string(exit_statuses));
    command->callback([&request, &row] { request.command = row.name; });
}

std::vector<std::string> known_options(const CLI::App& command) {
    std::vector<std::string> names;
    for (const CLI::Option* option : command.get_options())
        if (!option->get_lnames().empty())
            names.push_back("--" + option->get_lnames().front());
    return names;
}

/// Words after the command that it does not take.
[[noreturn]] void refuse_extras(const CLI::App& app) {
    const auto used = app.get_subcommands();
    const CLI::App& command = used.empty() ? app : *used.front();
    const auto extras = app.remaining(true);
    const std::string word = extras.empty() ? std::string() : extras.front();
    if (word.starts_with("-"))
        refuse(in_quotes(word), fmt::format("is not an option of {}", command.get_name()),
               suggest(word, known_options(command)));
    refuse(in_quotes(word), "is one word too many",
           fmt::format("see ringfill {} --help", used.empty() ? "" : command.get_name()));
}

/// The words with "take" put first when the first one names a file.
std::vector<std::string> with_default_command(int argc, const char* const* argv) {
    std::vector<std::string> words(argv + std::min(argc, 1), argv + argc);
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

} // namespace

std::variant<Request, Answer> read_command_line(int argc, const char* const* argv) {
    Request request;
    CLI::App app("Plans the weld build-up of worn bores: what to take, before you drive.", "ringfill");
    app.get_formatter()->column_width(28);
    app.set_version_flag("--version", fmt::format("ringfill {}", version), "print the version");
    app.require_subcommand(0, 1);
    app.footer("\n" + std::string(exit_statuses));
    for (const CommandRow& row : command_rows())
        add_command(app, row, request);
    std::vector<std::string> words = with_default_command(argc, argv);
    std::reverse(words.begin(), words.end()); // CLI11 takes its words from the back
    try {
        app.parse(words);
    } catch (const CLI::CallForHelp&) {
        const auto used = app.get_subcommands();
        return Answer{used.empty() ? app.help() : used.front()->help()};
    } catch (const CLI::CallForVersion& call) {
        return Answer{std::string(call.what()) + "\n"};
    } catch (const CLI::ExtrasError&) {
        refuse_extras(app);
    } catch (const CLI::ParseError& error) {
        refuse({}, printable(error.what()), "see ringfill --help");
    }
    if (request.command.empty())
        refuse({}, "no command was given", "see ringfill --help");
    return request;
}

} // namespace ringfill::cli
