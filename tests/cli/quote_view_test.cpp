#include <catch2/catch.hpp>

#include <cstdlib>
#include <regex>

#include <ringfill/document/parse.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string demo = std::string(RINGFILL_ROOT) + "/cli/demo/";

/// The starter job with other prices, which stand last in it.
std::string job_with(const std::string& prices) {
    std::string text = starter_job(UnitSystem::metric);
    text.resize(text.find("\"prices\": {"));
    return text.append("\"prices\": {").append(prices).append("}\n}\n");
}

/// The hours and minutes of all places of a text, added up.
long minutes(const std::string& text, const std::string& pattern) {
    const std::regex place(pattern);
    long sum = 0;
    for (std::sregex_iterator at(text.begin(), text.end(), place), end; at != end; ++at)
        sum += 60 * std::stol((*at)[1]) + std::stol((*at)[2]);
    return sum;
}

Outcome quoted(const std::string& prices, const std::vector<std::string>& more = {}) {
    const Workspace workspace;
    workspace.write("job.json", job_with(prices));
    std::vector<std::string> words{"quote", "job.json"};
    words.insert(words.end(), more.begin(), more.end());
    return run(workspace, {.words = words});
}

} // namespace

TEST_CASE("quote tells every cost and the total, and that it is whole") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"quote", demo + "dredger-pivots.json"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    CHECK_THAT(outcome.out, Contains("MATERIALS BY PACK ") && Contains("MATERIALS BY USE, for comparison ") &&
                                Contains("LABOUR ") && Contains("POWER ") && Contains("TRAVEL ") &&
                                Contains("  contingency, 5 % of ") && Contains("  mark-up, 15 % of ") &&
                                Contains("  tax, 20 % of ") && Contains("  TOTAL  "));
    CHECK_THAT(outcome.out, !Contains("missing") && !Contains("INCOMPLETE"));
}

// The demo is watched in four periods, a heated bore each, with looks for an hour after each; its day says
// that somebody stays with the heater of two bores, from the end of the hold.
TEST_CASE("quote tells the hours that the plan names and no line holds") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"quote", demo + "dredger-pivots.json"}});
    CHECK_THAT(outcome.out, Contains("from time to time over 4 h 00 min in all, are\n  in no line.") &&
                                Contains("- Tools without a price are not in it: contact thermometer, "));
    const std::string day = run(workspace, {.words = {"day", demo + "dredger-pivots.json"}}).out;
    const long stayed =
        minutes(day, "stays with the heater, to day [12] ([0-9]+):([0-9]+)") -
        minutes(day, "([0-9]+):([0-9]+) arm root [12]: hold hot") -
        minutes(day, "arm root [12]: hold hot after the last ring \\(([0-9]+) h ([0-9]+) min\\)");
    const long told =
        minutes(outcome.out, "after the last ring, ([0-9]+) h ([0-9]+) min\n  in all, is in no line");
    CHECK(told > 60);
    CHECK(std::abs(told - stayed) <= 3); // each is rounded to the minute
}

TEST_CASE("quote tells what is missing before anything else, and calls the total incomplete") {
    const Outcome outcome = quoted(R"("currency": "USD", "labour_hour": 100)");
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.out,
               Contains("\nMISSING, not in the total\n- wire steel/ER70S-6 1.0 mm, 5 kg spool: price: "
                        "write \"5 kg spool\" in\n  prices.packs, or its filler in prices.wire_kg\n"));
    CHECK(outcome.out.find("INCOMPLETE: ") < outcome.out.find("MISSING"));
}

TEST_CASE("a job without a currency has no quote, and quote says so") {
    const Outcome outcome = quoted(R"("labour_hour": 100)");
    CHECK(outcome.status == 0);
    CHECK(outcome.out == "Swing-arm pivots, gravel dredger 3\n\n"
                         "There is no quote: the job gives no prices.currency. ringfill start --fields\n"
                         "tells what prices it may have.\n\n"
                         "Local codes, the approved procedure and licensed practice prevail over\n"
                         "everything here.\n");
    const Outcome book = quoted(R"("labour_hour": 100)", {"-o", "quote.xlsx"});
    CHECK(book.status == 1);
    CHECK(book.err == "job.json: has no prices.currency, so there is no quote to write; write \"prices\": { "
                      "\"currency\": \"EUR\" } with your prices\n");
}

TEST_CASE("the result has amounts as whole small units and as texts, and the price as written") {
    const Outcome outcome = quoted(
        R"("currency": "KWD", "drive": 0.12345, "travel": { "distance": 100, "trips": 1 })", {"--json"});
    const Document result = parse("out", outcome.out, Origin::job);
    const Value& quote = value_at(result, "quote");
    CHECK(*quote.find("currency")->text() == "KWD");
    CHECK(*quote.find("exponent")->number() == 3);
    CHECK(*quote.find("whole")->flag() == false);
    CHECK(*quote.find("total_minor")->number() == 12'345); // 100 km at 0.12345
    CHECK(*quote.find("total")->text() == "12.345");
    CHECK_THAT(outcome.out, Contains("\"price\": \"0.12345\""));
    CHECK_THAT(outcome.out, Contains("\"missing\": \"price: write prices.watch_hour\"") ||
                                Contains("\"missing\": \"hours: "));
}

TEST_CASE("a workbook is written whole, over a file that was there, and stands alone") {
    const Workspace workspace;
    workspace.write("job.json", job_with(R"("currency": "EUR")"));
    workspace.write("quote.XLSX", "old");
    const Outcome outcome = run(workspace, {.words = {"quote", "job.json", "-o", "quote.XLSX"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.out.empty());
    CHECK(workspace.read("quote.XLSX").starts_with("PK"));
    CHECK(workspace.names() == std::vector<std::string>{"job.json", "quote.XLSX"});
    for (const char* option : {"--json", "--csv", "--working"}) {
        const Outcome refused = run(workspace, {.words = {"quote", "job.json", "-o", "other.xlsx", option}});
        CHECK(refused.status == 2);
        CHECK(refused.err ==
              fmt::format("ringfill: {} stands beside a workbook for -o; leave it out, or choose "
                          "a name that does not end in .xlsx\n",
                          option));
    }
    const Outcome nowhere = run(workspace, {.words = {"quote", "job.json", "-o", "no/quote.xlsx"}});
    CHECK(nowhere.status == 4);
    CHECK(nowhere.err == "no/quote.xlsx: cannot be written: No such file or directory; check the name and "
                         "make the folder first\n");
}

TEST_CASE("a file for a spreadsheet needs a currency, and a name that tells its kind") {
    const Outcome bare = quoted(R"("labour_hour": 100)", {"--csv"});
    CHECK(bare.status == 1);
    CHECK(bare.out.empty());
    CHECK(bare.err == "job.json: has no prices.currency, so there is no quote to write; write "
                      "\"prices\": { \"currency\": \"EUR\" } with your prices\n");
    for (const std::string name : {"q.xls", "q.ODS", "q.xlsm"}) {
        const Outcome other = quoted(R"("currency": "EUR")", {"-o", name});
        CHECK(other.status == 2);
        CHECK(other.err == "ringfill: " + name +
                               " is no workbook that it writes; end the name in .xlsx, or in "
                               ".csv with --csv\n");
    }
    const Outcome priceless = quoted(R"("currency": "EUR")", {"--csv"});
    CHECK(priceless.status == 0);
    CHECK_THAT(priceless.out, Contains("\ntotal,yes,,,,,,,EUR,"));
}

TEST_CASE("a price needs a name") {
    const Outcome outcome = quoted(R"("currency": "EUR", "extras": { "": 7, " ": 8, "lodging": 9 })");
    CHECK(outcome.status == 1);
    CHECK_THAT(outcome.err, Contains("prices.extras.: 7 is a price without a name; name what it is for"));
}

TEST_CASE("a temporary folder that is not there is told with what to do") {
    const Workspace workspace;
    workspace.write("job.json", job_with(R"("currency": "EUR")"));
    const Outcome outcome = run(workspace, {.words = {"quote", "job.json", "-o", "quote.xlsx"},
                                            .environment = {{"TMPDIR", workspace.path("no")}}});
    CHECK(outcome.status == 4);
    CHECK(outcome.out.empty());
    CHECK_THAT(outcome.err, Contains(": cannot be written: ") &&
                                Contains("; make room there, or name another folder in TMPDIR\n"));
    CHECK(workspace.names() == std::vector<std::string>{"job.json"});
}

TEST_CASE("a hostile extra is harmless in the text and marked as text in the CSV") {
    for (const std::string name : {"=cmd|' /C calc'!A0", "+1", "-1", "@SUM(A1)"}) {
        CAPTURE(name);
        const std::string prices = fmt::format(R"("currency": "EUR", "extras": {{ "{}": 1 }})", name);
        CHECK_THAT(quoted(prices, {"--csv"}).out, Contains("extras,yes,'" + name + ",1,"));
    }
    const std::string prices =
        R"("currency": "EUR", "extras": { "red\u001b[31m\u202E": 1 }, "packs": { "a\u0007": 1 })";
    const std::string text = quoted(prices).out;
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find('\a') == std::string::npos);
    CHECK(text.find("\u202E") == std::string::npos);
}

TEST_CASE("what an unknown pack holds is told as unknown, in every form") {
    const Workspace workspace;
    std::string none;
    for (const char* pack : {"10 L", "20 L", "50 L", "125 ft3", "336 ft3"})
        none += fmt::format(R"({}"{} mixture cylinder": {{ "units": "mm", "holds": "argon_mixture",
            "content_L": [2000, "practice"], "usable_share": [0.9, "practice"], "stocked": false }})",
                            none.empty() ? "" : ", ", pack);
    std::filesystem::create_directory(workspace.path("own"));
    workspace.write("own/packs.json",
                    R"({ "format": "ringfill-packs/1", "description": "of this shop", "gas": { )" + none +
                        " } }");
    const auto told = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"quote", demo + "dredger-pivots.json", "--tables", "own"};
        words.insert(words.end(), more.begin(), more.end());
        const Outcome outcome = run(workspace, {.words = words});
        CHECK(outcome.err.empty());
        return outcome.out;
    };
    CHECK_THAT(told({}), Contains(" L      of ?  missing\n"));
    CHECK_THAT(told({"--csv"}),
               Contains(",L,,,,EUR,pack: none of the table of packs holds it\r\n") && !Contains(",L,0.001,"));
    CHECK_THAT(told({"--json"}), !Contains("\"of\": 0.001"));
}

TEST_CASE("a zero may have a sign") {
    const Outcome outcome =
        quoted(R"("currency": "EUR", "drive": -0, "travel": { "distance": -0.0, "trips": 1 })");
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    CHECK_THAT(outcome.out, Contains("  driving, 1 trip ") && Contains("0 km      0.00     0.00\n"));
    const Outcome negative = quoted(R"("currency": "EUR", "drive": -0.5)");
    CHECK(negative.status == 1);
    CHECK_THAT(negative.err, Contains("prices.drive: -0.5 is out of range"));
}

TEST_CASE("every line of a quote is under 80 columns, whatever it is called and costs") {
    const std::string name(300, 'W');
    const std::string words =
        "lodging and meals for two people over four nights in a village far from the machine";
    const Outcome outcome = quoted(fmt::format(
        R"("currency": "VND", "labour_hour": 99999999.25, "drive": 99999999, "travel": {{ "distance": 399.125, "trips": 2 }},
           "extras": {{ "{}": 99999999, "{}": 1 }}, "packs": {{ "{}": 1 }}, "tax": "99.125 %")",
        name, words, name));
    CHECK(outcome.err.empty());
    CHECK(outcome.status == 0);
    std::size_t begin = 0;
    while (begin < outcome.out.size()) {
        const std::size_t end = outcome.out.find('\n', begin);
        const std::string line = outcome.out.substr(begin, end - begin);
        CAPTURE(line);
        CHECK(count_characters(line) < 80);
        CHECK((line.empty() || line.back() != ' '));
        begin = end + 1;
    }
}
