#include <algorithm>
#include <regex>
#include <sstream>

#include <catch2/catch.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/job/format.hpp>

#include "long_job.hpp"
#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

const std::string bold = "\x1b[1m";

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::string taken(const std::string& job, const std::vector<std::string>& more = {}) {
    const Workspace workspace;
    workspace.write("job.json", job);
    std::vector<std::string> words{"take", "job.json"};
    words.insert(words.end(), more.begin(), more.end());
    const Outcome outcome = run(workspace, {.words = words});
    INFO(outcome.err);
    REQUIRE(outcome.status == 0);
    return outcome.out;
}

void check_under_80_columns(const std::string& text) {
    for (const std::string& line : lines_of(text)) {
        CAPTURE(line);
        CHECK(count_characters(line) < 80);
        CHECK((line.empty() || line.back() != ' '));
    }
}

std::string with(std::string job, const std::string& old_text, const std::string& new_text) {
    REQUIRE(job.find(old_text) != std::string::npos);
    return job.replace(job.find(old_text), old_text.size(), new_text);
}

/// A job whose every column is as wide as the limits of the format let it be.
std::string wide_job(const std::string& units) {
    std::string job = starter_job(units == "inch" ? UnitSystem::inch : UnitSystem::metric);
    job = with(job, "\"90 mm\"", "\"5000 mm\"");
    job = with(job, "\"100 mm\"", "\"9000 mm\"");
    job = with(job, "\"180 mm\"", "\"9900 mm\"");
    job = with(job, "\"93.4 mm\"", "\"5200 mm\"");
    job = with(job, "// \"count\": 1,", "\"count\": 9999,");
    return with(job, "\"arm root\"", '"' + std::string(80, 'W') + '"');
}

std::string on_terminal(const std::vector<std::pair<std::string, std::string>>& environment) {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome outcome = run_on_terminal(workspace, {.words = {"job.json"}, .environment = environment});
    CHECK(outcome.status == 0);
    CHECK_THAT(outcome.out, Contains("1.39 kg of wire"));
    return outcome.out;
}

} // namespace

TEST_CASE("every line of what to take is under 80 columns") {
    check_under_80_columns(taken(starter_job(UnitSystem::metric)));
    check_under_80_columns(taken(starter_job(UnitSystem::inch)));
    check_under_80_columns(taken(long_job("Many", 30)));
    check_under_80_columns(taken(wide_job("mm")));
    check_under_80_columns(taken(wide_job("inch")));
    check_under_80_columns(taken(starter_job(UnitSystem::metric), {"--working"}));
    check_under_80_columns(taken(wide_job("inch"), {"--working"}));
}

TEST_CASE("the wire to take stands in the first five lines") {
    const std::regex wire("[0-9]+ bores? · [0-9.]+ kg of wire · .+ of arc");
    const std::string long_words = "abcdefghijklmnopqrstuvwxyzabcdefghijklmn ";
    std::string many;
    for (int i = 0; i < 20; ++i)
        many += long_words;
    for (const std::string& title : {std::string("Short"), std::string(10'000, 'x'), many}) {
        auto lines = lines_of(taken(long_job(title, 3)));
        REQUIRE(lines.size() > 5);
        lines.resize(5);
        CAPTURE(lines);
        CHECK(std::any_of(lines.begin(), lines.end(),
                          [&](const std::string& line) { return std::regex_match(line, wire); }));
    }
}

TEST_CASE("an inch job shows inches, pounds and cubic feet, and no metric figures") {
    const std::string text = taken(starter_job(UnitSystem::inch));
    CHECK_THAT(text, Contains("lb of wire"));
    // 94.4 mm over the skim, by 25.4 mm to the inch: 3.7165
    CHECK_THAT(text, Contains("3.717 in"));
    CHECK_THAT(text, Contains("ft³"));
    const std::string figures =
        text.substr(0, text.find("ASSUMED")); // assumed values stand as the file would give them
    CHECK_FALSE(std::regex_search(figures, std::regex("[0-9] (mm|kg|L|m)\\b")));
    CHECK(taken(starter_job(UnitSystem::metric), {"--units", "inch"}) == text);
}

TEST_CASE("a metric job shows millimetres, kilograms and litres") {
    const std::string text = taken(starter_job(UnitSystem::metric));
    CHECK_THAT(text, Contains("94.4 mm") && Contains("kg of wire") && Contains(" L "));
    CHECK_FALSE(std::regex_search(text, std::regex("[0-9] (in|lb|ft)")));
    CHECK(taken(starter_job(UnitSystem::inch), {"--units", "mm"}) == text);
}

TEST_CASE("nothing is dressed in a pipe or a file") {
    const Workspace workspace;
    workspace.write("job.json", starter_job(UnitSystem::metric));
    const Outcome piped =
        run(workspace, {.words = {"job.json"}, .environment = {{"TERM", "xterm-256color"}}});
    CHECK(piped.out.find('\x1b') == std::string::npos);
    const Outcome filed = run_on_terminal(
        workspace, {.words = {"job.json", "-o", "out.txt"}, .environment = {{"TERM", "xterm-256color"}}});
    CHECK(filed.status == 0);
    CHECK(workspace.read("out.txt") == piped.out);
}

TEST_CASE("a terminal shows headings bold, in the same words") {
    const std::string dressed = on_terminal({{"TERM", "xterm-256color"}});
    CHECK_THAT(dressed, Contains(bold + "TAKE"));
    // Weight alone says nothing: without it the text is the one of the pipe.
    std::string plain = std::regex_replace(dressed, std::regex("\x1b\\[[01]m|\r"), "");
    CHECK(plain == taken(starter_job(UnitSystem::metric)));
}

TEST_CASE("a terminal that takes no dress, or a user who wants none, gets plain text") {
    CHECK(on_terminal({{"TERM", "dumb"}}).find('\x1b') == std::string::npos);
    CHECK(on_terminal({{"TERM", "xterm"}, {"NO_COLOR", "1"}}).find('\x1b') == std::string::npos);
}
