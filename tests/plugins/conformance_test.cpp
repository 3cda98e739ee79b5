#include <catch2/catch.hpp>

#include <clocale>
#include <csignal>
#include <filesystem>
#include <map>
#include <string>

#include <sys/stat.h>

#include <fmt/format.h>

#include <ringfill/material/conformance.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

/// Puts back what the plugins of these tests change.
class Keep {
  public:
    Keep() : folder_(std::filesystem::current_path()), mask_(::umask(0)) {
        ::umask(mask_);
        ::sigprocmask(SIG_SETMASK, nullptr, &signals_);
    }
    Keep(const Keep&) = delete;
    Keep& operator=(const Keep&) = delete;
    ~Keep() {
        std::filesystem::current_path(folder_);
        ::umask(mask_);
        ::sigprocmask(SIG_SETMASK, &signals_, nullptr);
        std::signal(SIGINT, SIG_DFL);
        std::setlocale(LC_ALL, "C");
    }

  private:
    std::filesystem::path folder_;
    mode_t mask_;
    sigset_t signals_ = {};
};

/// "rule: how", a line for each rule that a plugin breaks.
std::string broken_by(const std::string& name) {
    const Keep keep;
    std::string text;
    for (const RuleKept& rule : conformance(plugin_file(name), test_sources()))
        if (!rule.broken.empty())
            text += fmt::format("{}: {}\n", rule.rule, rule.broken);
    return text;
}

const std::string about = " (preheat of bad/B1)";

} // namespace

TEST_CASE("a good plugin keeps every rule, in a fixed order, each told as it begins and ends") {
    std::vector<std::string> begun;
    std::vector<std::string> ended;
    ConformanceWatch watch;
    watch.begins = [&](const std::string& rule) { begun.push_back(rule); };
    watch.ends = [&](const RuleKept& rule) { ended.push_back(rule.rule); };
    const auto rules = conformance(plugin_file("good"), test_sources(), watch);
    for (const RuleKept& rule : rules) {
        INFO(rule.rule);
        CHECK(rule.broken.empty());
    }
    const std::vector<std::string> expected = {
        "loads",
        "exports ringfill_material_v1 only",
        "leaves nothing to run at the end of the program",
        "brings a table that can be read",
        "answers every question on the metals of its table",
        "gives the same answer to the same question",
        "gives the same answers when asked in reverse order",
        "goes by the names of numbers and skips those it does not know",
        "calls a topic it does not know unsupported",
        "asks no less of a thicker wall",
        "asks no less for more hydrogen",
        "answers each question within 2 seconds",
        "leaves the locale alone",
        "leaves the decimal point alone",
        "leaves the working directory alone",
        "leaves the rights of new files alone",
        "leaves the signal handlers alone",
        "leaves the open files alone",
        "leaves the blocked signals alone",
        "leaves the limits of the process alone",
        "leaves the child processes alone",
        "leaves the threads alone",
    };
    CHECK(begun == expected);
    CHECK(ended == expected);
    REQUIRE(rules.size() == expected.size());
}

TEST_CASE("a plugin without a rule is not asked") {
    const auto rules = conformance(plugin_file("twin_a"), test_sources());
    CHECK(rules.size() == 14);
    CHECK(broken_by("twin_a").empty());
}

TEST_CASE("a rule that rests on a broken one is not tried") {
    CHECK(conformance(plugin_file("no_symbol"), test_sources()).size() == 1);
    CHECK(broken_by("no_symbol") == "loads: is a shared library, but no plugin: it does not export "
                                    "ringfill_material_v1; take it out of the "
                                    "folder, or export that symbol\n");
    CHECK(broken_by("bad_json") ==
          "brings a table that can be read: its table:1:13: format: this is not JSON here; "
          "look for a missing comma, quote or bracket just before it\n");
    CHECK(broken_by("no_density") ==
          "brings a table that can be read: its table:1:88: bases.B1.density_kg_m3: is missing; write "
          "\"density_kg_m3\": [7850, \"EN1993-1-2\"]\n");
}

TEST_CASE("each plugin breaks just its own rule") {
    const std::string answers = "answers every question on the metals of its table: ";
    const std::map<std::string, std::string> expected = {
        {"exports_more", "exports ringfill_material_v1 only: exports helper too\n"},
        {"celsius", answers + "gave the minimum of the method \"M\" as 100 K, below 200 K" + about +
                        "; give it in kelvin, not in degrees Celsius\n"},
        {"needs_wall", answers + "cannot answer" + about + ": wall_m: the wall is not known\n"},
        {"counts",
         "gives the same answer to the same question: the answer on bad/B1 with steel/ER70S-6 was another "
         "one\ngives the same answers when asked in reverse order: the answer on bad/B1 with "
         "steel/ER70S-6 was another one\ngoes by the names of numbers and skips those it does not know: "
         "the answer on bad/B1 with steel/ER70S-6 changed with the order of the numbers or with one it "
         "cannot know\n"},
        {"order_matters",
         "goes by the names of numbers and skips those it does not know: the answer on bad/B1 with "
         "steel/ER70S-6 changed with the order of the numbers or with one it cannot know\n"},
        {"any_topic",
         "calls a topic it does not know unsupported: it answered one on bad/B1 with steel/ER70S-6\n"},
        {"thinner_when_thick",
         "asks no less of a thicker wall: bad/B1 with steel/ER70S-6, \"M\" fell from 373.146 K "
         "to 373.138 K when the wall grew from 0.004 m to 0.012 m\n"},
        {"less_for_hydrogen",
         "asks no less for more hydrogen: bad/B1 with steel/ER70S-6, \"M\" fell from 370.15 K to "
         "368.15 K when the hydrogen rose from 3 to 5 mL/100 g\n"},
        {"sets_locale", "leaves the locale alone: was C and became C.UTF-8\n"},
        {"runs_at_end", "leaves nothing to run at the end of the program: registers a function that runs "
                        "then, with atexit or as the destructor of a static object\n"},
        {"blocks_signals", "leaves the blocked signals alone: was none and became 15\n"},
        {"closes_output",
         answers + "closed or replaced standard output" + about + "; leave the files of the program alone\n"},
        {"masks", "leaves the rights of new files alone: was 022 and became 000\n"},
    };
    ::umask(022);
    for (const auto& [name, lines] : expected) {
        INFO(name);
        CHECK(broken_by(name) == lines);
    }
}

TEST_CASE("what a plugin leaves changed in the process is told") {
    const std::string here = std::filesystem::current_path().string();
    CHECK(broken_by("moves") ==
          fmt::format("leaves the working directory alone: was {} and became /\n", here));
    const std::string signals = broken_by("catches_signals");
    CHECK(signals.starts_with("leaves the signal handlers alone: was "));
    CHECK(signals.find("INT ignored") != std::string::npos);
    CHECK(broken_by("opens").starts_with("leaves the open files alone: was "));
    CHECK(broken_by("starts_thread").starts_with("leaves the threads alone: was "));
}
