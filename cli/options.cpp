#include "options.hpp"

#include <algorithm>
#include <vector>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <ringfill/fault/nearest.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/version.hpp>

#include "command_rows.hpp"
#include "request_rules.hpp"

namespace ringfill::cli {
namespace {

constexpr std::string_view example = "Example: ringfill start job.json (then edit it), and ringfill job.json";

/// Where the text of an option goes.
std::string& text_of(std::string_view names, Request& request) {
    return names == "--tables"    ? request.tables
           : names == "--plugins" ? request.plugins
           : names == "--check"   ? request.check
           : names == "--schema"  ? request.schema
                                  : request.output;
}

void add_option(CLI::App& command, const OptionRow& row, Request& request) {
    const std::string names(row.names);
    const std::string help(row.help);
    if (row.names == "--json")
        command.add_flag(names, request.json, help);
    else if (row.names == "--csv")
        command.add_flag(names, request.csv, help);
    else if (row.names == "--working")
        command.add_flag(names, request.working, help);
    else if (row.names == "--strict")
        command.add_flag(names, request.strict, help);
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
            ->take_last()
            ->type_name(std::string(row.value));
    else {
        CLI::Option* option = command.add_option(names, text_of(row.names, request), help);
        option->take_last()->type_name(std::string(row.value));
        if (row.names == "-o,--output")
            option->each([](const std::string& name) {
                if (name.empty())
                    refuse(in_quotes(name), "names no file for -o",
                           "write -o FILE, or - for standard output");
            });
        if (row.names == "--schema")
            option->expected(0, 1)->default_str("job");
    }
}

void add_command(CLI::App& app, const CommandRow& row, Request& request) {
    CLI::App* command = app.add_subcommand(std::string(row.name), std::string(row.summary));
    command->add_option(std::string(row.word), request.file, std::string(row.word_help))
        ->type_name("")
        ->required(row.word_required);
    for (const std::string_view names : row.options)
        for (const OptionRow& option : option_rows())
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

bool is_option_of_a_command(const CLI::App& app, const std::string& word) {
    const auto commands = app.get_subcommands([](const CLI::App*) { return true; });
    return std::any_of(commands.begin(), commands.end(), [&](const CLI::App* command) {
        return command->get_option_no_throw(word) != nullptr;
    });
}

/// An option that stands without the value it takes.
[[noreturn]] void refuse_lone_option(const CLI::ArgumentMismatch& error) {
    const std::string what = error.what();
    const std::string name = what.substr(0, what.find(':'));
    for (const OptionRow& row : option_rows())
        if (row.names.ends_with(name))
            refuse(in_quotes(name), "has no value", fmt::format("write {} {}", name, row.value));
    refuse({}, printable(what), "see ringfill --help");
}

/// Words after the command that it does not take.
[[noreturn]] void refuse_extras(const CLI::App& app) {
    const auto used = app.get_subcommands();
    const CLI::App& command = used.empty() ? app : *used.front();
    const auto extras = app.remaining(true);
    const std::string word = extras.empty() ? std::string() : extras.front();
    if (word.starts_with("-") && used.empty() && is_option_of_a_command(app, word))
        refuse(in_quotes(word), "stands before the command",
               "write it after, as in ringfill take JOB --json");
    const auto own = known_options(command);
    if (word.starts_with("-") && std::find(own.begin(), own.end(), word) != own.end())
        refuse(in_quotes(word), "stands before the command",
               fmt::format("write it after, as in ringfill {} JOB {}", command.get_name(), word));
    if (word.starts_with("-"))
        refuse(in_quotes(word), fmt::format("is not an option of {}", command.get_name()),
               suggest(word, own));
    refuse(in_quotes(word), "is one word too many",
           fmt::format("see ringfill {} --help", used.empty() ? "" : command.get_name()));
}

} // namespace

std::variant<Request, Answer> read_command_line(int argc, const char* const* argv) {
    Request request;
    CLI::App app("Plans the weld build-up of worn bores: what to take, before you drive.", "ringfill");
    app.get_formatter()->column_width(28);
    app.set_version_flag("--version", fmt::format("ringfill {}", version), "print the version");
    app.require_subcommand(0, 1);
    app.footer(fmt::format("\n{}\n\n{}", example, exit_statuses));
    for (const CommandRow& row : command_rows())
        add_command(app, row, request);
    std::vector<std::string> words =
        with_default_command(std::vector<std::string>(argv + std::min(argc, 1), argv + argc));
    std::reverse(words.begin(), words.end()); // CLI11 takes its words from the back
    try {
        app.parse(words);
    } catch (const CLI::CallForHelp&) {
        return Answer{app.help()};
    } catch (const CLI::CallForVersion& call) {
        return Answer{std::string(call.what()) + "\n"};
    } catch (const CLI::ExtrasError&) {
        refuse_extras(app);
    } catch (const CLI::RequiredError&) {
        refuse_without_job(app.get_subcommands().front()->get_name());
    } catch (const CLI::ArgumentMismatch& error) {
        refuse_lone_option(error);
    } catch (const CLI::ParseError& error) {
        refuse({}, printable(error.what()), "see ringfill --help");
    }
    judge_request(request,
                  request.command == "check" && app.get_subcommand("check")->get_option("JOB")->empty());
    return request;
}

} // namespace ringfill::cli
