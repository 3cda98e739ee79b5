#include "command_rows.hpp"

namespace ringfill::cli {
namespace {

constexpr std::string_view job_word = "JOB";
constexpr std::string_view job_help = "the job file, or - for standard input";

} // namespace

constinit const std::string_view exit_statuses =
    "Exit status:\n"
    "  0   planned; notes and cautions included\n"
    "  1   the job, or a line of batch, cannot be planned as written\n"
    "  2   the command line is wrong\n"
    "  3   a plugin or a table is broken\n"
    "  4   a file cannot be read or written\n"
    "  70  a fault of the program\n"
    "  130 batch was asked to end (Ctrl-C) and finished the lines it had begun\n"
    "A reader that closes the pipe early (| head) is no fault.\n\n"
    "Plans only: local codes, the approved welding procedure and licensed practice\n"
    "rule over everything printed.";

const std::vector<OptionRow>& option_rows() {
    static const std::vector<OptionRow> rows = {
        {"--json", "", "print the whole result as JSON (ringfill-plan/1)"},
        {"--csv", "", "print this view as comma-separated values"},
        {"--working", "", "show how each figure was reached: formula, inputs, source"},
        {"-o,--output", "FILE", "write to FILE: beside it first, then renamed over it"},
        {"--units", "mm|inch", "show in these units, with packs sold in them; start: units of the job"},
        {"--tables", "DIR", "your own tables; their entries add to or correct ours"},
        {"--plugins", "DIR", "your own plugins of material families, beside ours"},
        {"--strict", "", "a value that looks mistyped is a fault, status 1"},
        {"--check", "FILE", "try every rule of the plugin interface on one plugin"},
        {"--schema", "job|result", "print a JSON Schema of job files, or of what take --json prints; no JOB"},
        {"--fields", "", "list every field of a job file: kind, range, default, meaning"},
    };
    return rows;
}

const std::vector<CommandRow>& command_rows() {
    static const std::vector<CommandRow> rows = {
        {"take",
         job_word,
         job_help,
         true,
         "what to take in the van: wire, gas, torch parts, and why",
         "Reads a job file and prints what to load, the figures of each bore, cautions,\n"
         "notes and the values it assumed. This is what ringfill JOB does too.\n\n"
         "Example: ringfill take job.json --units inch",
         {"--json", "--csv", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"passes",
         job_word,
         job_help,
         true,
         "layers, rings, pitch, travel and torch speeds, bore by bore",
         "Reads a job file and prints what to set on the torch and what each layer, face\n"
         "and groove lays, in the sequence of the work.\n\n"
         "Example: ringfill passes job.json --csv -o passes.csv",
         {"--json", "--csv", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"heat",
         job_word,
         job_help,
         true,
         "preheat and interpass temperature, who asks for them, where to measure",
         "Reads a job file and tells for each bore how hot it must be before the first\n"
         "ring and how hot it may get, which method or procedure asks for it, and what\n"
         "the others say.\n\n"
         "Example: ringfill heat job.json",
         {"--json", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"boring",
         job_word,
         job_help,
         true,
         "cuts, bar speed, size limits, gauge readings and time, bore by bore",
         "Reads a job file and prints how each bore is skimmed before the weld and cut\n"
         "back to size after it, what the gauge must read while it is warm, and how many\n"
         "cutting edges that takes.\n\n"
         "Example: ringfill boring job.json --csv -o cuts.csv",
         {"--json", "--csv", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"day",
         job_word,
         job_help,
         true,
         "the work by the clock, from unloading to the visit for the crack test",
         "Reads a job file and lays the work out by the clock: set-up, survey, skim, preheat,\n"
         "welding with its waits, cooling, boring, nights. Bores of a line take turns where\n"
         "that is sooner. The job says when the day starts, how long it is worked and what\n"
         "going to another bore costs (start, working_day, breaks, change_over).\n\n"
         "Example: ringfill day job.json",
         {"--json", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"quote",
         job_word,
         job_help,
         true,
         "the price of the job, line by line, with what is missing",
         "Reads a job file and prices what to take by pack and by use, the hours of the day by\n"
         "phase, power, travel and what is put on top, from the prices of the job. A price that\n"
         "is missing is said and the total called incomplete. With -o FILE.xlsx it writes a\n"
         "workbook with live formulas that gives the same total.\n\n"
         "Example: ringfill quote job.json -o quote.xlsx",
         {"--json", "--csv", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"cautions",
         job_word,
         job_help,
         true,
         "what can hurt on this job, the fire watch by the clock, and the sources",
         "Reads a job file and prints what applies to it before, during and after the work,\n"
         "with the numbers and the source behind each, and in one short list what the job\n"
         "does not say and you should check. site.fire_rules picks a rule of the fire watch;\n"
         "the longest one known counts otherwise. Reminders only: they permit nothing.\n\n"
         "Example: ringfill cautions job.json",
         {"--json", "--working", "-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"sheet",
         job_word,
         job_help,
         true,
         "all of it on pages to print and write on: hot-work notes, not a permit",
         "Reads a job file and writes one page of HTML that needs nothing else: what to take,\n"
         "the day, each bore with drawings, layers, heat, cuts and columns to write in,\n"
         "cautions, sources, and how each figure was reached. It prints on A4 and Letter and\n"
         "reads on a telephone. It is no permit and no welding procedure.\n\n"
         "Example: ringfill sheet job.json -o job.html",
         {"-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"batch",
         "FILE",
         "jobs, each on one line (JSON Lines), or - for standard input",
         true,
         "plan many jobs, a line each, and print a plan a line in their order",
         "Reads one job a line and prints its whole plan (ringfill-plan/1) on one line, in order\n"
         "and as they come, on all cores: taskset narrows that. A line that cannot be planned is\n"
         "answered by its faults (ringfill-fault/1) on that line, an empty one by an empty one;\n"
         "the others go on, and the status is that of the worst line. Ctrl-C ends it after the\n"
         "lines it has begun; a second one ends it at once. With -o the file appears when all\n"
         "is done.\n\n"
         "Example: ringfill batch jobs.jsonl -o plans.jsonl",
         {"-o,--output", "--units", "--strict", "--tables", "--plugins"}},
        {"check",
         job_word,
         job_help,
         false,
         "read and judge a job file only, or print a schema",
         "Prints every fault of the file with its line, and exits with 1 if it cannot be\n"
         "planned as written. Then every value that looks mistyped, and what each bore is\n"
         "read as, to hold against the drawing. With --schema it prints a JSON Schema (draft 2020-12) for\n"
         "editors and other programs instead: of job files (it cannot judge all that check\n"
         "does) or, after the word result, of what take --json prints.\n\n"
         "Example: ringfill check job.json && ringfill take job.json",
         {"--json", "--schema", "--strict", "-o,--output", "--tables", "--plugins"}},
        {"materials",
         "NAME",
         "a family, or family/name of a base metal or filler; all when left out",
         false,
         "families, base metals and fillers, with their sources",
         "Lists the families and what they hold; for one base metal or filler every value\n"
         "with its source and how it is known. With --check every rule of the plugin\n"
         "interface is tried on one plugin; a broken one ends with status 3.\n\n"
         "Example: ringfill materials steel/C45",
         {"-o,--output", "--tables", "--plugins", "--check"}},
        {"start",
         "FILE",
         "where to write; standard output when left out",
         false,
         "write a commented starter job",
         "Writes a job that plans as it stands, with every optional field shown once as a\n"
         "comment. A file that exists is not touched.\n\n"
         "Example: ringfill start job.json",
         {"--fields", "--units"}},
    };
    return rows;
}

} // namespace ringfill::cli
