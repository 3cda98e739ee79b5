#include <algorithm>

#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>
#include <ringfill/fault/printable.hpp>
#include <ringfill/job/format.hpp>

#include "run_program.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// The starter job under another title, bore name and procedure name; the texts as JSON will have them.
std::string job_with(const std::string& title, const std::string& name,
                     const std::string& procedure = "main") {
    std::string text = starter_job(UnitSystem::metric);
    const auto put = [&text](const std::string& old_text, const std::string& new_text) {
        const std::string json = write_json(Value(new_text));
        text.replace(text.find(old_text), old_text.size(), json.substr(0, json.size() - 1));
    };
    put("\"Swing-arm pivots, gravel dredger 3\"", title);
    put("\"arm root\"", name);
    put("\"main\"", procedure);
    return text;
}

/// Nothing that could drive a terminal or turn a line round: no control character but the line break, no mark
/// of writing direction, no broken UTF-8.
void check_harmless(const std::string& text) {
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        const std::string line = text.substr(begin, end - begin);
        CAPTURE(line);
        CHECK(printable(line, 100'000) == line);
        begin = end + 1;
    }
}

const std::vector<std::string> hostile = {
    std::string(10'000, 'x'),
    "say \"ready\" \\ and 'go'",
    "\u202Eretsec-teb\u202C \u200Fright to left\u200E \u2066isolated\u2069",
    "bell\a back\b escape\x1b[31mred\x1b]0;title\a delete\x7F next\u0085 csi\u009B31m",
    "two\nlines\tand\r\none",
    "=cmd|' /C calc'!A0",
    "{} {0} %s %n $(id) `id` ; rm -rf .",
    "zero\u200Bwidth \uFEFF tag\U000E0041 emoji \U0001F527",
};

} // namespace

TEST_CASE("a hostile title is harmless in the text and comes back whole from the JSON") {
    for (const std::string& title : hostile) {
        CAPTURE(title);
        const Workspace workspace;
        workspace.write("job.json", job_with(title, "arm root"));
        const Outcome text = run(workspace, {.words = {"job.json"}});
        CHECK(text.status == 0);
        check_harmless(text.out);

        const Outcome result = run(workspace, {.words = {"job.json", "--json"}});
        CHECK(result.status == 0);
        check_harmless(result.out);
        const Document document = parse("out", result.out, Origin::job);
        REQUIRE(document.root.find("title"));
        CHECK(*document.root.find("title")->text() == title);
    }
}

TEST_CASE("a hostile bore or procedure name is harmless wherever it stands") {
    for (std::size_t i = 1; i < hostile.size(); ++i) {
        const std::string& name = hostile[i];
        CAPTURE(name);
        const Workspace workspace;
        workspace.write("job.json", job_with("A title", name, name));
        const Outcome text = run(workspace, {.words = {"job.json"}});
        CHECK(text.status == 0);
        check_harmless(text.out);
        const Outcome result = run(workspace, {.words = {"job.json", "--json"}});
        check_harmless(result.out);
        const Document document = parse("out", result.out, Origin::job);
        CHECK(*value_at(document, "bores[0].name").text() == name);
        CHECK(*value_at(document, "bores[0].procedure").text() == name);
    }
}

TEST_CASE("a hostile name is harmless in the other views") {
    for (std::size_t i = 1; i < hostile.size(); ++i) {
        const std::string& name = hostile[i];
        CAPTURE(name);
        const Workspace workspace;
        workspace.write("job.json", job_with(name, name, name));
        for (const std::vector<std::string>& words : {std::vector<std::string>{"passes", "job.json"},
                                                      {"take", "job.json", "--working"},
                                                      {"passes", "job.json", "--working"},
                                                      {"check", "job.json"},
                                                      {"check", "job.json", "--json"}}) {
            CAPTURE(words);
            const Outcome outcome = run(workspace, {.words = words});
            CHECK(outcome.status == 0);
            check_harmless(outcome.out);
        }
    }
}

TEST_CASE("a name that a spreadsheet would take for a formula is marked as text in the CSV") {
    for (const std::string name : {"=cmd|' /C calc'!A0", "+1", "-1", "@SUM(A1)"}) {
        CAPTURE(name);
        const Workspace workspace;
        workspace.write("job.json", job_with("A title", name));
        const Outcome outcome = run(workspace, {.words = {"passes", "job.json", "--csv"}});
        CHECK(outcome.status == 0);
        CHECK_THAT(outcome.out, Contains("\r\n'" + name + ",1,layer,1,"));
        CHECK_THAT(outcome.out, !Contains("\n" + name));
    }
}

TEST_CASE("a hostile name is harmless in a message") {
    for (std::size_t i = 1; i < hostile.size(); ++i) {
        const Workspace workspace;
        std::string job = job_with("A title", hostile[i], hostile[i]);
        job.replace(job.find("\"93.4 mm\""), 9, "\"80 mm\"  "); // cleans up without weld: names the bore
        job.replace(job.find("\"steel/ER70S-6\""), 15, "\"steel/\\u001b\"  "); // names the filler
        workspace.write("job.json", job);
        const Outcome outcome = run(workspace, {.words = {"job.json"}});
        CHECK(outcome.status == 1);
        CHECK(outcome.out.empty());
        CHECK_THAT(outcome.err, Contains("is not a known filler") && Contains("cleans up at"));
        check_harmless(outcome.err);
    }
}

TEST_CASE("a name of 10,000 characters is refused and not printed") {
    const Workspace workspace;
    const std::string job = job_with("A title", hostile[0]);
    workspace.write("job.json", job);
    const Outcome outcome = run(workspace, {.words = {"job.json"}});
    CHECK(outcome.status == 1);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == fmt::format("job.json:{}:13: ", line_of(job, "\"xxx")) + "bores[0].name: \"" +
                             std::string(60, 'x') +
                             "…\" is too long; write 1 to 80 characters\n"
                             "        \"name\": \"" +
                             std::string(29, 'x') +
                             "…\n"
                             "                ^\n");
}

TEST_CASE("a text that is no UTF-8 is refused") {
    const Workspace workspace;
    std::string job = starter_job(UnitSystem::metric);
    job.replace(job.find("Swing-arm"), 5, "\xC0\x9B\xFF\xFE!");
    workspace.write("job.json", job);
    const Outcome outcome = run(workspace, {.words = {"job.json"}});
    CHECK(outcome.status == 1);
    CHECK(outcome.out.empty());
    check_harmless(outcome.err);
    CHECK_THAT(outcome.err, Contains("this is not JSON here"));
}
