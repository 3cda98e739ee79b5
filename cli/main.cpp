#include <csignal>
#include <exception>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <fmt/format.h>

#include <ringfill/fault/fault.hpp>
#include <ringfill/fault/printable.hpp>

#include "commands/commands.hpp"
#include "exit_code.hpp"
#include "table_folder.hpp"
#include "terminal.hpp"
#include "watched_run.hpp"

namespace ringfill::cli {
namespace {

ExitCode run(const Request& request) {
    if (request.command == "batch")
        return batch_command(request);
    static const std::map<std::string_view, void (*)(const Request&)> commands = {
        {"take", take_command},           {"passes", passes_command}, {"heat", heat_command},
        {"boring", boring_command},       {"day", day_command},       {"cautions", cautions_command},
        {"sheet", sheet_command},         {"check", check_command},   {"start", start_command},
        {"materials", materials_command}, {"quote", quote_command},
    };
    commands.at(request.command)(request);
    return planned;
}

/// Does something and tells the faults it throws.
ExitCode with_faults_told(const std::function<ExitCode()>& something) {
    try {
        return something();
    } catch (const Faulty& faulty) {
        complain(fmt::format("{}\n", faulty.what()));
        return exit_code_of(faulty.origin());
    } catch (const std::exception& error) {
        complain(fmt::format(
            "ringfill: a fault of the program, not of your job: {}; please report it with the job file\n",
            printable(error.what())));
        return our_fault;
    }
}

ExitCode answer(int argc, const char* const* argv) {
    const auto asked = read_command_line(argc, argv);
    if (const Answer* answer = std::get_if<Answer>(&asked)) {
        deliver(answer->text, {});
        return planned;
    }
    const Request& request = std::get<Request>(asked);
    const bool reads_plugins = request.command != "start" && request.check.empty() && request.schema.empty();
    const auto foreign = reads_plugins ? foreign_plugins(request.plugins) : std::vector<std::string>();
    if (!foreign.empty())
        return run_watched(foreign, [&] { return with_faults_told([&] { return run(request); }); });
    return run(request);
}

} // namespace
} // namespace ringfill::cli

int main(int argc, char** argv) {
    (void)std::signal(SIGPIPE, SIG_IGN); // a closed pipe is an error of write(), not a killed program
    return ringfill::cli::with_faults_told([&] { return ringfill::cli::answer(argc, argv); });
}
