#include <array>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>

#include <algorithm>

#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>

#include "long_job.hpp"
#include "run_program.hpp"
#include "talk.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::Contains;

namespace {

/// A job on one line: the starter's words without its comments.
std::string on_one_line(const std::string& job) {
    return write_json_line(parse("job", job, Origin::job).root);
}

std::string titled(const std::string& title) {
    std::string job = starter_job(UnitSystem::metric);
    const std::string old = "Swing-arm pivots, gravel dredger 3";
    return on_one_line(job.replace(job.find(old), old.size(), title));
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at);
        REQUIRE(end != std::string::npos); // each line ends
        lines.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

const Value& member(const Value& object, const char* name) {
    const Value* found = object.find(name);
    REQUIRE(found);
    return *found;
}

} // namespace

TEST_CASE("batch answers each line with the plan that the job alone would have") {
    const Workspace workspace;
    std::string jobs;
    std::vector<std::string> alone;
    for (const char* title : {"first", "second", "third"}) {
        jobs += titled(title);
        workspace.write("one.json", titled(title));
        alone.push_back(on_one_line(run(workspace, {.words = {"one.json", "--json"}}).out));
    }
    workspace.write("jobs.jsonl", jobs);
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"batch", "jobs.jsonl"}, std::vector<std::string>{"batch", "-"}}) {
        const Outcome outcome = run(workspace, {.words = words, .input = jobs});
        CHECK(outcome.status == 0);
        CHECK(outcome.err.empty());
        CHECK(outcome.out == alone[0] + alone[1] + alone[2]);
    }
}

TEST_CASE("batch keeps the order of the lines, however long each takes") {
    const Workspace workspace;
    std::string jobs;
    for (int i = 0; i < 40; ++i)
        jobs += on_one_line(long_job(fmt::format("job {}", i), i % 7 == 0 ? 60 : 1));
    workspace.write("jobs.jsonl", jobs);
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl"}});
    CHECK(outcome.status == 0);
    const auto lines = lines_of(outcome.out);
    REQUIRE(lines.size() == 40);
    for (std::size_t i = 0; i < lines.size(); ++i)
        CHECK(lines[i].starts_with(fmt::format(R"({{"format":"ringfill-plan/1","title":"job {}",)", i)));
}

TEST_CASE("a line that cannot be planned is answered on its line, counted, and the others go on") {
    const Workspace workspace;
    std::string no_unit = titled("no unit");
    no_unit.replace(no_unit.find("\"90 mm\""), 7, "\"90\"");
    workspace.write("jobs.jsonl", titled("good") + no_unit + "{\"format\": \n\n[]\n" + titled("last"));
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl"}});
    CHECK(outcome.status == 1);
    const auto lines = lines_of(outcome.out);
    REQUIRE(lines.size() == 6);
    CHECK_THAT(lines[0], Contains("\"title\":\"good\""));
    CHECK(lines[3].empty()); // beside an empty line
    CHECK_THAT(lines[5], Contains("\"title\":\"last\""));

    const std::string sentence =
        fmt::format("jobs.jsonl:2:{}: bores[0].finish_diameter: \"90\" has no unit; write \"90 mm\" or "
                    "\"3.543 in\"",
                    no_unit.find("\"90\"") + 1);
    const Value fault = parse("fault", lines[1], Origin::job).root;
    CHECK(*member(fault, "format").text() == "ringfill-fault/1");
    CHECK(*member(fault, "line").number() == 2);
    CHECK(*member(fault, "origin").text() == "job");
    const Value& first = member(fault, "faults").list()->front();
    CHECK(*member(first, "path").text() == "bores[0].finish_diameter");
    CHECK(*member(first, "value").text() == "\"90\"");
    CHECK(*member(first, "reason").text() == "has no unit");
    CHECK(*member(first, "remedy").text() == "write \"90 mm\" or \"3.543 in\"");
    CHECK(*member(first, "text").text() == sentence);
    for (const std::size_t broken : {std::size_t{2}, std::size_t{4}})
        CHECK(lines[broken].starts_with(fmt::format(
            R"({{"format":"ringfill-fault/1","line":{},"origin":"job","faults":[{{)", broken + 1)));
    CHECK(outcome.err == "ringfill: 3 of 6 lines cannot be planned; the first: " + sentence + "\n");
}

TEST_CASE("batch reads lines as other systems end them, and the last one without an end") {
    const Workspace workspace;
    std::string jobs = titled("one") + titled("two");
    jobs.pop_back();
    jobs.insert(jobs.find('\n'), "\r");
    const Outcome outcome = run(workspace, {.words = {"batch", "-"}, .input = jobs});
    CHECK(outcome.status == 0);
    CHECK(lines_of(outcome.out).size() == 2);
    const Outcome nothing = run(workspace, {.words = {"batch", "-"}, .input = ""});
    CHECK(nothing.status == 0);
    CHECK(nothing.out.empty());
    CHECK(nothing.err.empty());
}

TEST_CASE("a line too long for a job is refused without being kept, and the next one is read") {
    const Workspace workspace;
    workspace.write("jobs.jsonl", std::string(9'000'000, '[') + "\n" + titled("next"));
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl"}});
    CHECK(outcome.status == 1);
    const auto lines = lines_of(outcome.out);
    REQUIRE(lines.size() == 2);
    CHECK_THAT(lines[0], Contains("is larger than 4000000 bytes"));
    CHECK_THAT(lines[1], Contains("\"title\":\"next\""));
}

TEST_CASE("answers come while batch still waits for more") {
    const Workspace workspace;
    const Talk talk(workspace, {"batch", "-"});
    for (const char* title : {"first", "second"}) {
        talk.say(titled(title));
        CHECK_THAT(talk.hear_line(), Contains(fmt::format("\"title\":\"{}\"", title)));
    }
}

TEST_CASE("asked to end, batch finishes the lines it has begun and says where it stopped") {
    for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
        const Workspace workspace;
        const Talk talk(workspace, {"batch", "-"});
        talk.say(titled("first") + on_one_line(long_job("second", 20)));
        const std::string half = titled("third");
        talk.say(half.substr(0, half.size() / 2));
        CHECK_THAT(talk.hear_line(), Contains("\"title\":\"first\""));
        ::kill(talk.process, signal);
        const auto rest = lines_of(Talk::rest_of(talk.from));
        CHECK(talk.status() == 130);
        REQUIRE(rest.size() <= 1); // the half line is none
        if (rest.size() == 1)
            CHECK_THAT(rest.front(), Contains("\"title\":\"second\""));
        CHECK(Talk::rest_of(talk.errors) ==
              fmt::format("ringfill: asked to end after line {} of standard input\n", 1 + rest.size()));
    }
}

TEST_CASE("a file that batch writes is there when all is done, and not before") {
    const Workspace workspace;
    workspace.write("jobs.jsonl", titled("one") + titled("two"));
    workspace.write("plans.jsonl", "old\n");
    const std::string plans = run(workspace, {.words = {"batch", "jobs.jsonl"}}).out;
    {
        const Talk talk(workspace, {"batch", "-", "-o", "plans.jsonl"});
        talk.say(titled("one"));
        talk.wait_until_caught(SIGHUP); // the last that it takes, and none that this program catches
        ::kill(talk.process, SIGINT);
        CHECK(talk.status() == 130);
        CHECK_THAT(Talk::rest_of(talk.errors), Contains("; plans.jsonl was left as it was\n"));
        CHECK(workspace.read("plans.jsonl") == "old\n");
    }
    const Outcome outcome = run(workspace, {.words = {"batch", "jobs.jsonl", "-o", "plans.jsonl"}});
    CHECK(outcome.status == 0);
    CHECK(outcome.out.empty());
    CHECK(workspace.read("plans.jsonl") == plans);
    CHECK(workspace.names() == std::vector<std::string>{"jobs.jsonl", "plans.jsonl"});
}

TEST_CASE("a reader that has enough ends a batch without a fault") {
    const Workspace workspace;
    std::array<int, 2> unread{};
    REQUIRE(::pipe2(unread.data(), O_CLOEXEC) == 0);
    ::close(unread[0]);
    std::string jobs;
    for (int i = 0; i < 20; ++i)
        jobs += titled(fmt::format("job {}", i));
    const Outcome outcome =
        run(workspace, {.words = {"batch", "-"}, .input = jobs, .standard_output = unread[1]});
    ::close(unread[1]);
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
}

TEST_CASE("batch ends with status 4 where its answers cannot be written") {
    const Workspace workspace;
    std::string jobs;
    for (int i = 0; i < 20; ++i)
        jobs += titled(fmt::format("job {}", i));
    const int full = ::open("/dev/full", O_WRONLY | O_CLOEXEC);
    const Outcome outcome = run(workspace, {.words = {"batch", "-"}, .input = jobs, .standard_output = full});
    ::close(full);
    CHECK(outcome.status == 4);
    CHECK(outcome.err == "standard output: cannot be written: No space left on device; make room, or write "
                         "elsewhere with -o FILE\n");
}

TEST_CASE("batch needs a file that can be read") {
    const Workspace workspace;
    const auto refused = [&](const std::vector<std::string>& words, int status, const std::string& message) {
        const Outcome outcome = run(workspace, {.words = words});
        CHECK(outcome.status == status);
        CHECK(outcome.err == message);
        CHECK(outcome.out.empty());
    };
    refused({"batch"}, 2,
            "ringfill: batch needs a file of jobs; write ringfill batch FILE, or - for standard input\n");
    refused({"batch", "no.jsonl"}, 4,
            "no.jsonl: cannot be read: No such file or directory; check the name\n");
    refused({"batch", "."}, 4, ".: cannot be read: Is a directory; name a file, not a folder\n");
}
