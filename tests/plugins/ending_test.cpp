#include <catch2/catch.hpp>

#include <utility>
#include <vector>

#include "plugins/plugin_folder.hpp"

using namespace ringfill::testing;

namespace {

const std::string away = "; take it away, or see what ringfill materials --check tells of it\n";
const std::string ended = "ended the program or put another in its place ";

/// What the program says of each plugin that ends it or takes its output, after the name of the file.
const std::vector<std::pair<std::string, std::string>> told = {
    {"exits", ended + "(exit status 0)" + away},
    {"ends_at_once", ended + "(exit status 0)" + away},
    {"ends_quickly", ended + "(exit status 0)" + away},
    {"becomes_another", ended + "(exit status 0)" + away},
    {"ends_when_loaded", ended + "(exit status 0)" + away},
    {"closes_output",
     "closed or replaced standard output (preheat of bad/B1); leave the files of the program alone\n"},
    {"takes_output",
     "closed or replaced standard output (preheat of bad/B1); leave the files of the program alone\n"},
    {"takes_output_when_loaded",
     "closes or replaces standard output when it is loaded; build the plugin again without what does that\n"},
    {"closes_all", "closed or replaced a standard stream of the program" + away},
};

} // namespace

// A sanitizer ends the program in its own words.
TEST_CASE("a plugin that crashes is named") {
    const PluginFolder mine({"crashes"});
    const Outcome outcome = mine.run({"take", "-"}, on_one_line(job_of("bad/B1")));
    CHECK(outcome.status == 3);
    CHECK(outcome.out.empty());
    CHECK(outcome.err == mine.file("crashes") + ": " + ended + "(signal 11, Segmentation fault)" + away);
}

TEST_CASE("a plugin that ends the program or takes its output is named, and nothing passes for a plan") {
    for (const auto& [name, words] : told) {
        CAPTURE(name);
        const PluginFolder mine({name});
        for (const std::string command : {"take", "check", "batch"}) {
            if (command == "batch" && name.starts_with("takes_output"))
                continue; // told with the line, below
            const Outcome outcome = mine.run({command, "-"}, on_one_line(job_of("bad/B1")));
            CAPTURE(command);
            CHECK(outcome.status == 3);
            if (command != "batch" || !outcome.err.starts_with("ringfill: 1 of 1 lines")) {
                CHECK(outcome.out.empty());
                CHECK(outcome.err == mine.file(name) + ": " + words);
            }
        }
    }
}

TEST_CASE("batch keeps the answers it gave before a plugin took its output, and goes on after it") {
    const PluginFolder mine({"takes_output"});
    const std::string steel = on_one_line(job_of("steel/C45"));
    const Outcome outcome =
        mine.run({"batch", "-"}, steel + "\n" + on_one_line(job_of("bad/B1")) + "\n" + steel + "\n");
    CHECK(outcome.status == 3);
    const std::size_t second = outcome.out.find('\n') + 1;
    const std::size_t third = outcome.out.find('\n', second) + 1;
    CHECK(outcome.out.starts_with(R"({"format":"ringfill-plan/1")"));
    CHECK(outcome.out.substr(second).starts_with(R"({"format":"ringfill-fault/1","line":2,)"));
    CHECK(outcome.out.substr(third) == outcome.out.substr(0, second));
}

TEST_CASE("a plan that is printed whole before a plugin ends the program is not called good") {
    const PluginFolder mine({"ends_at_end"});
    const Outcome outcome = mine.run({"take", "-"}, job_of("bad/B1"));
    CHECK(outcome.status == 3);
    CHECK(outcome.out.find("TAKE") != std::string::npos);
    CHECK(outcome.err ==
          mine.file("ends_at_end") + ": was loaded when something ended the program (exit status 5)" + away);
}

TEST_CASE("a plugin that goes on in two processes gets one plan") {
    const PluginFolder good({"good"});
    const PluginFolder forks({"forks"});
    const Outcome one = good.run({"take", "-"}, job_of("bad/B1"));
    const Outcome two = forks.run({"take", "-"}, job_of("bad/B1"));
    CHECK(one.status == 0);
    CHECK(two.status == 0);
    CHECK(two.out == one.out);
}

TEST_CASE("with plugins of others the program ends as it does without") {
    const PluginFolder mine({"good"});
    CHECK(mine.run({"take", "-"}, "{}").status == 1);
    CHECK(mine.run({"take", "nowhere.json"}).status == 4);
    CHECK(mine.run({"take", "-"}, job_of("steel/C45")).out ==
          run(mine.workspace(), {.words = {"take", "-"}, .input = job_of("steel/C45")}).out);
}
