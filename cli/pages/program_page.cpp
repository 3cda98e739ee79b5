#include <algorithm>
#include <vector>

#include <fmt/format.h>

#include <ringfill/version.hpp>

#include "../command_rows.hpp"
#include "mdoc.hpp"
#include "pages.hpp"

namespace ringfill::cli {
namespace {

constexpr std::string_view example_mark = "\n\nExample: ";

/// What an example is for, and its line.
struct Example {
    std::string what;
    std::string line;
};

const OptionRow& option_of(std::string_view names) {
    return *std::find_if(option_rows().begin(), option_rows().end(),
                         [&](const OptionRow& row) { return row.names == names; });
}

/// "-o,--output" with its value as macros: Fl o , Fl -output Ar FILE.
std::string flags(const OptionRow& row) {
    std::string text;
    std::string_view names = row.names;
    while (!names.empty()) {
        const std::size_t end = std::min(names.find(','), names.size());
        text += fmt::format("{}Fl {}", text.empty() ? "" : " , ", names.substr(1, end - 1));
        names.remove_prefix(std::min(end + 1, names.size()));
    }
    return row.value.empty() ? text : fmt::format("{} Ar {}", text, row.value);
}

std::string word_of(const CommandRow& row) {
    return fmt::format("{} {}", row.word_required ? ".Ar" : ".Op Ar", row.word);
}

std::string synopsis() {
    std::string text = ".Nm\n.Ar JOB\n";
    for (const CommandRow& row : command_rows())
        text += fmt::format(".Nm\n.Cm {}\n.Op Ar option ...\n{}\n", row.name, word_of(row));
    return text + ".Nm\n.Fl -version | Fl -help\n";
}

std::string commands() {
    std::string text = ".Bl -tag -width Ds\n";
    for (const CommandRow& row : command_rows()) {
        std::string_view more = row.more;
        more = more.substr(0, more.find(example_mark));
        text += fmt::format(".It Cm {} {}\n{}.Pp\n{}.Pp\nOptions:\n", row.name, word_of(row).substr(1),
                            mdoc_prose(fmt::format("{}.", row.summary)), mdoc_prose(more));
        for (std::size_t i = 0; i < row.options.size(); ++i)
            text += fmt::format(".{}{}\n", flags(option_of(row.options[i])),
                                i + 1 < row.options.size() ? " ," : " .");
    }
    return text + ".El\n";
}

std::string options() {
    std::string text = ".Bl -tag -width Ds\n";
    for (const OptionRow& row : option_rows())
        text += fmt::format(".It {}\n{}", flags(row), mdoc_prose(fmt::format("{}.", row.help)));
    text += ".It Fl h , Fl -help\n";
    text += mdoc_prose("print what there is; after a command, what that command does and takes.");
    return text + ".It Fl -version\nprint the version.\n.El\n";
}

/// The lines of the exit statuses as a list, and what the help says after them as text.
std::string exit_status() {
    std::string list = ".Bl -tag -width Ds\n";
    std::string after;
    std::string_view rest = exit_statuses;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        std::string_view line = rest.substr(0, end);
        rest.remove_prefix(std::min(end + 1, rest.size()));
        if (line.starts_with("  ")) {
            line.remove_prefix(2);
            const std::size_t gap = line.find(' ');
            list += fmt::format(".It {}\n{}", line.substr(0, gap),
                                mdoc_prose(line.substr(line.find_first_not_of(' ', gap))));
        } else if (!line.ends_with(':')) {
            after += line.empty() ? std::string(".Pp\n") : mdoc_prose(line);
        }
    }
    return list + ".El\n.Pp\n" + after;
}

/// In the order in which they can be tried one after the other: a job is there before it is read.
std::vector<Example> examples() {
    std::vector<Example> all;
    for (const CommandRow& row : command_rows()) {
        const std::size_t at = row.more.find(example_mark);
        if (at == std::string_view::npos)
            continue;
        Example one{std::string(row.summary), std::string(row.more.substr(at + example_mark.size()))};
        all.insert(row.name == "start" ? all.begin() : all.end(), std::move(one));
    }
    all.push_back({"the whole result for another program", "ringfill take job.json --json -o plan.json"});
    all.push_back({"how each figure was reached", "ringfill heat job.json --working"});
    all.push_back({"a job from a pipe", "ringfill start | ringfill take -"});
    all.push_back({"every field of a job", "ringfill start --fields"});
    all.push_back({"a schema for an editor", "ringfill check --schema -o ringfill-job.schema.json"});
    all.push_back({"a schema of results", "ringfill check --schema result -o ringfill-plan.schema.json"});
    return all;
}

} // namespace

std::string program_page(const std::string& date) {
    std::string text = fmt::format(".Dd {}\n.Dt RINGFILL 1\n.Os ringfill {}\n.Sh NAME\n.Nm ringfill\n"
                                   ".Nd plan the weld build-up of worn bores\n.Sh SYNOPSIS\n{}",
                                   date, version, synopsis());
    text += ".Sh DESCRIPTION\n.Nm\n";
    text += mdoc_prose(
        "plans the repair of worn pin bores before the van leaves: bored out, filled with rings of "
        "weld by a rotating torch, bored to size. From one file with the worn bores it works out "
        "layers, wire, gas, fuel, preheat, cuts, time and what to take, with the reason for each.");
    text += ".Pp\nThe file\n.Ar JOB\nis described in\n.Xr ringfill-job 5 ;\n";
    text += mdoc_prose(
        "a minus sign stands for standard input. A job without a command is taken as take. Results go "
        "to standard output, faults to standard error, each with its line and a remedy.");
    text += ".Pp\nThe commands:\n" + commands() + ".Sh OPTIONS\n" + options();
    text += ".Sh FILES WRITTEN\n";
    text += mdoc_prose(
        "A file named with -o is replaced whole or not at all: what ends the program first, SIGINT, "
        "SIGTERM or SIGHUP, leaves the old one as it is. A link to a file is followed; the file "
        "takes the place of a link to nothing.");
    text += ".Sh ENVIRONMENT\n.Bl -tag -width Ds\n.It Ev RINGFILL_PLUGINS\n";
    text +=
        mdoc_prose("folders to look for plugins of material families in as well, parted by colons. Loading a "
                   "plugin runs its code as you.");
    text += ".It Ev TMPDIR\n";
    text += mdoc_prose("the folder for parts of a workbook while it is made; they have no name there.");
    text += ".It Ev NO_COLOR , TERM\n";
    text += mdoc_prose("no bold text where the first is set, nor on a terminal that is called dumb.");
    text +=
        fmt::format(".El\n.Sh FILES\nUnder the prefix of the program:\n.Bl -tag -width Ds\n.It Pa {}\n"
                    "the tables\n.It Pa {}\nthe material families\n.It Pa {}\nsample jobs\n.It Pa {}\n"
                    "the schema of a job\n.It Pa {}\nthe schema of a result\n.El\n",
                    "share/ringfill/tables", RINGFILL_PLUGINS_UNDER_PREFIX, "share/doc/ringfill/examples",
                    "share/ringfill/ringfill-job.schema.json", "share/ringfill/ringfill-plan.schema.json");
    text += ".Sh EXIT STATUS\n" + exit_status() + ".Sh EXAMPLES\n";
    for (const Example& example : examples())
        text += fmt::format("{}.Pp\n.Dl $ {}.Pp\n", mdoc_prose(fmt::format("{}:", example.what)),
                            mdoc_literal(example.line));
    text.erase(text.size() - 4); // no paragraph before a section
    return text + ".Sh SEE ALSO\n.Xr ringfill-job 5\n";
}

} // namespace ringfill::cli
