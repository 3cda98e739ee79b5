#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string starter = starter_job(UnitSystem::metric);

/// Runs the words in a folder that holds a good job.json; the whole of standard error, nothing on standard
/// output.
void check_refused(const std::vector<std::string>& words, int status, const std::string& message) {
    const Workspace workspace;
    workspace.write("job.json", starter);
    const Outcome outcome = run(workspace, {.words = words});
    CAPTURE(words);
    CHECK(outcome.err == message);
    CHECK(outcome.out.empty());
    CHECK(outcome.status == status);
    CHECK(workspace.names() == std::vector<std::string>{"job.json"});
}

} // namespace

TEST_CASE("a job that is planned ends with status 0 and says nothing on standard error") {
    const Workspace workspace;
    workspace.write("job.json", starter);
    const Outcome take = run(workspace, {.words = {"take", "job.json"}});
    CHECK(take.status == 0);
    CHECK(take.err.empty());
    CHECK(take.out.starts_with("Swing-arm pivots, gravel dredger 3\n"));

    const Outcome bare = run(workspace, {.words = {"job.json"}});
    CHECK(bare.status == 0);
    CHECK(bare.err.empty());
    CHECK(bare.out == take.out);
}

TEST_CASE("a minus sign reads the job from standard input") {
    const Workspace workspace;
    workspace.write("job.json", starter);
    const Outcome file = run(workspace, {.words = {"take", "job.json", "--json"}});
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"take", "-", "--json"}, std::vector<std::string>{"-", "--json"}}) {
        const Outcome piped = run(workspace, {.words = words, .input = starter});
        CHECK(piped.status == 0);
        CHECK(piped.err.empty());
        CHECK(piped.out == file.out);
    }
    const Outcome checked = run(workspace, {.words = {"check", "-"}, .input = "{}"});
    CHECK(checked.status == 1);
    CHECK(checked.out.empty());
    CHECK(checked.err.starts_with("standard input:1:1: format: is missing;"));
}

TEST_CASE("a job that cannot be planned ends with status 1") {
    const Workspace workspace;
    std::string text = starter;
    text.replace(text.find("\"90 mm\""), 7, "\"90\"");
    workspace.write("job.json", text);
    for (const char* command : {"take", "check"}) {
        const Outcome outcome = run(workspace, {.words = {command, "job.json", "--json"}});
        CHECK(outcome.status == 1);
        CHECK(outcome.out.empty());
        CHECK(outcome.err ==
              fmt::format("job.json:{}:24: ", line_of(text, "\"90\"")) +
                  "bores[0].finish_diameter: \"90\" has no unit; write \"90 mm\" or \"3.543 in\"\n"
                  "        \"finish_diameter\": \"90\",              // the diam…\n"
                  "                           ^\n");
    }
}

TEST_CASE("a wrong command line ends with status 2 and says what to write") {
    check_refused({"tak", "job.json"}, 2, "ringfill: \"tak\" is not a command; did you mean \"take\"?\n");
    check_refused(
        {"weld", "job.json"}, 2,
        "ringfill: \"weld\" is not a command; known here: take, passes, heat, boring, day, quote, cautions, "
        "sheet, batch, check, materials, start\n");
    check_refused({"take", "job.json", "--jsn"}, 2,
                  "ringfill: \"--jsn\" is not an option of take; did you mean \"--json\"?\n");
    check_refused({"take", "job.json", "--colour"}, 2,
                  "ringfill: \"--colour\" is not an option of take; known here: --help, --json, --csv, "
                  "--working, --output, --units, --strict, --tables, --plugins\n");
    check_refused(
        {"check", "job.json", "--units", "mm"}, 2,
        "ringfill: \"--units\" is not an option of check; known here: --help, --json, --schema, --strict, "
        "--output, --tables, --plugins\n");
    check_refused({"--vresion"}, 2,
                  "ringfill: \"--vresion\" is not an option of ringfill; did you mean \"--version\"?\n");
    check_refused({"--json", "job.json"}, 2,
                  "ringfill: \"--json\" stands before the command; write it after, as in ringfill take JOB "
                  "--json\n");
}

TEST_CASE("a missing word ends with status 2 and says what to write") {
    check_refused({"take"}, 2,
                  "ringfill: take needs a job file; write ringfill take JOB, or - for standard input\n");
    check_refused({"check", "--json"}, 2,
                  "ringfill: check needs a job file; write ringfill check JOB, or - for standard input\n");
    check_refused({"check", ""}, 2,
                  "ringfill: \"\" names no file; write the name of the job file, or - for standard input\n");
    for (const auto& words : {std::vector<std::string>{"check", "job.json", "--schema"},
                              {"check", "--schema", "result", "job.json"}})
        check_refused(words, 2, "ringfill: \"job.json\" stands beside --schema; leave one out\n");
    check_refused({"take", ""}, 2,
                  "ringfill: \"\" names no file; write the name of the job file, or - for standard input\n");
    check_refused({"job.json", "-o"}, 2, "ringfill: \"--output\" has no value; write --output FILE\n");
    check_refused({"job.json", "--units"}, 2, "ringfill: \"--units\" has no value; write --units mm|inch\n");
    check_refused({"job.json", "--tables"}, 2, "ringfill: \"--tables\" has no value; write --tables DIR\n");
}

TEST_CASE("a word too many, a unit system or a schema that does not exist ends with status 2") {
    check_refused({"check", "--schema", "job.json"}, 2,
                  "ringfill: \"job.json\" names no schema; write job or result\n");
    check_refused({"check", "--schema=Result"}, 2,
                  "ringfill: \"Result\" names no schema; write job or result\n");
    check_refused({"take", "job.json", "job.json"}, 2,
                  "ringfill: \"job.json\" is one word too many; see ringfill take --help\n");
    check_refused({"job.json", "job.json"}, 2,
                  "ringfill: \"job.json\" is one word too many; see ringfill take --help\n");
    check_refused({"job.json", "--units", "cm"}, 2,
                  "ringfill: \"cm\" is not a unit system for --units; write mm or inch\n");
    check_refused({"start", "--units=Inch"}, 2,
                  "ringfill: \"Inch\" is not a unit system for --units; write mm or inch\n");
}

TEST_CASE("a word of the command line cannot disturb the terminal") {
    check_refused({"take", "job.json", "--\x1b[31m"}, 2,
                  "ringfill: \"--\uFFFD[31m\" is not an option of take; known here: --help, --json, --csv, "
                  "--working, --output, --units, --strict, --tables, --plugins\n");
    check_refused({"take", "no\x1b[31m.json"}, 4,
                  "no\uFFFD[31m.json: cannot be read: No such file or directory; check the name\n");
}

TEST_CASE("a broken table ends with status 3 and shows the place") {
    const Workspace workspace;
    workspace.write("job.json", starter);
    workspace.write("mine/packs.json",
                    "{\n  \"format\": \"ringfill-packs/1\",\n  \"description\": \"mine\",\n"
                    "  \"wire\": { \"7 kg spool\": { \"units\": \"mm\", \"content_kg\": 7 } }\n}\n");
    const Outcome outcome = run(workspace, {.words = {"job.json", "--tables", "mine"}});
    CHECK(outcome.status == 3);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == "mine/packs.json:4:58: wire.7 kg spool.content_kg: 7 has no source; write a number "
                         "with its source such "
                         "as [7850, \"EN1993-1-2\"]\n"
                         "      \"wire\": { \"7 kg spool\": { \"units\": \"mm\", \"content_kg\": 7 } }\n"
                         "                                                             ^\n");
}

TEST_CASE("a file that cannot be read ends with status 4") {
    check_refused({"no.json"}, 4, "no.json: cannot be read: No such file or directory; check the name\n");
    check_refused({"check", "."}, 4, ".: cannot be read: Is a directory; name a file, not a folder\n");
    check_refused(
        {"job.json/x"}, 4,
        "job.json/x: cannot be read: Not a directory; a part of the name is a file, not a folder\n");
    check_refused({"job.json", "--tables", "mine"}, 4, "mine: is not a folder of tables; check the name\n");
    check_refused({"job.json", "--tables", "job.json"}, 4,
                  "job.json: is not a folder of tables; check the name\n");
}

TEST_CASE("a file that may not be read ends with status 4") {
    const Workspace workspace;
    workspace.write("job.json", starter);
    workspace.write("ringfill", content_of(RINGFILL_PROGRAM)); // where the user without privileges may run it
    std::filesystem::permissions(workspace.path("job.json"), std::filesystem::perms::none);
    std::filesystem::permissions(workspace.path("ringfill"), std::filesystem::perms{0755});
    const Outcome outcome = run(
        workspace,
        {.words = {"check", "job.json"}, .program = workspace.path("ringfill"), .without_privileges = true});
    CHECK(outcome.status == 4);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == "job.json: cannot be read: Permission denied; choose a file that you may read\n");
}

TEST_CASE("a name for the result that is empty or ends in another format is refused") {
    check_refused({"job.json", "-o", ""}, 2,
                  "ringfill: \"\" names no file for -o; write -o FILE, or - for standard output\n");
    check_refused(
        {"job.json", "--json", "-o", "x.csv"}, 2,
        "ringfill: \"x.csv\" ends in .csv, and --json was asked for; end the name in .json, or leave the "
        "option out\n");
}
