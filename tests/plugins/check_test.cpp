#include <catch2/catch.hpp>

#include <string>

#include <fmt/format.h>

#include "cli/run_program.hpp"
#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Outcome checked(const std::string& file) {
    const Workspace workspace;
    return run(workspace, {.words = {"materials", "--check", file}});
}

/// The lines of the rules that are broken.
std::string broken_lines(const std::string& out) {
    std::string broken;
    for (std::size_t from = 0; from < out.size();) {
        const std::size_t end = out.find('\n', from) + 1;
        if (const std::string line = out.substr(from, end - from);
            line.find(": broken: ") != std::string::npos)
            broken += line;
        from = end;
    }
    return broken;
}

const std::string asked = "answers every question on the metals of its table";

} // namespace

TEST_CASE("materials --check prints a line a rule and ends with 0 when all are kept") {
    const Outcome outcome = checked(plugin_file("good"));
    CHECK(outcome.status == 0);
    CHECK(outcome.err.empty());
    CHECK(outcome.out == "loads: kept\n"
                         "exports ringfill_material_v1 only: kept\n"
                         "leaves nothing to run at the end of the program: kept\n"
                         "brings a table that can be read: kept\n"
                         "answers every question on the metals of its table: kept\n"
                         "gives the same answer to the same question: kept\n"
                         "gives the same answers when asked in reverse order: kept\n"
                         "goes by the names of numbers and skips those it does not know: kept\n"
                         "calls a topic it does not know unsupported: kept\n"
                         "asks no less of a thicker wall: kept\n"
                         "asks no less for more hydrogen: kept\n"
                         "answers each question within 2 seconds: kept\n"
                         "leaves the locale alone: kept\n"
                         "leaves the decimal point alone: kept\n"
                         "leaves the working directory alone: kept\n"
                         "leaves the rights of new files alone: kept\n"
                         "leaves the signal handlers alone: kept\n"
                         "leaves the open files alone: kept\n"
                         "leaves the blocked signals alone: kept\n"
                         "leaves the limits of the process alone: kept\n"
                         "leaves the child processes alone: kept\n"
                         "leaves the threads alone: kept\n"
                         "comes back from every call: kept\n"
                         "prints nothing: kept\n");
}

TEST_CASE("materials --check keeps every rule for the families of the program") {
    for (const std::string family : {"steel", "stainless"}) {
        const Outcome outcome = checked(std::string(RINGFILL_PLUGIN_FOLDER) + "/" + family + ".family");
        INFO(outcome.out);
        CHECK(outcome.status == 0);
        CHECK(broken_lines(outcome.out).empty());
    }
}

TEST_CASE("materials --check reports a plugin that crashes") {
    const Outcome outcome = checked(plugin_file("crashes"));
    CHECK(outcome.status == 3);
    CHECK(broken_lines(outcome.out) ==
          "comes back from every call: broken: ended by signal 11 (Segmentation fault) while: " + asked +
              "\n");
    CHECK(outcome.err == plugin_file("crashes") +
                             ": breaks 1 of the 6 rules of the plugin interface that were "
                             "tried; put right what the list tells\n");
}

TEST_CASE("materials --check reports a plugin that ends the program") {
    const Outcome outcome = checked(plugin_file("exits"));
    CHECK(outcome.status == 3);
    CHECK(broken_lines(outcome.out) ==
          "comes back from every call: broken: ended the program with exit status 0 while: " + asked + "\n");
}

TEST_CASE("materials --check reports a plugin that ends the program when it is loaded, or with it") {
    CHECK(broken_lines(checked(plugin_file("ends_when_loaded")).out) ==
          "comes back from every call: broken: ended the program with exit status 0 while: loads\n");
    CHECK(broken_lines(checked(plugin_file("ends_at_end")).out) ==
          "comes back from every call: broken: ended the program with exit status 5 while: the program "
          "ended\n");
}

TEST_CASE("materials --check judges the time of the single answer") {
    CHECK(broken_lines(checked(plugin_file("sleeps")).out)
              .starts_with("answers each question within 2 seconds: broken: took 3."));
    // Many quick answers may take longer than one slow one: 0.25 s for each of the 84 of the first rule.
    CHECK(broken_lines(checked(plugin_file("dawdles")).out).empty());
}

TEST_CASE("materials --check finds what a plugin does to the processes of the program") {
    for (const std::string name : {"forks", "leaves_child", "runs_program"})
        CHECK(broken_lines(checked(plugin_file(name)).out)
                  .starts_with("leaves the child processes alone: broken: was none left, none ended and "
                               "became "));
}

TEST_CASE("materials --check stops a plugin that never comes back") {
    const Outcome outcome = checked(plugin_file("loops"));
    CHECK(outcome.status == 3);
    CHECK(broken_lines(outcome.out) ==
          "comes back from every call: broken: did not come back within 20 seconds while: " + asked + "\n");
}

TEST_CASE("materials --check reports a plugin that prints, and shows none of it as its own") {
    const Outcome outcome = checked(plugin_file("prints"));
    CHECK(outcome.status == 3);
    const std::string thinking = "thinking\xEF\xBF\xBD";
    CHECK(broken_lines(outcome.out) == "prints nothing: broken: printed \"" + thinking + thinking + thinking +
                                           thinking + thinking + thinking + "thinki…\" to standard output\n");
    CHECK(outcome.err == plugin_file("prints") +
                             ": breaks 1 of the 24 rules of the plugin interface that were "
                             "tried; put right what the list tells\n");
    CHECK(broken_lines(checked(plugin_file("complains")).out) ==
          "prints nothing: broken: printed \"hello\" to standard error\n");
}

TEST_CASE("materials --check of what is no plugin says so, and of what is not there likewise") {
    const Workspace workspace;
    workspace.write("x.family", "text");
    const Outcome text = run(workspace, {.words = {"materials", "--check", "x.family"}});
    CHECK(text.status == 3);
    CHECK(text.out ==
          "loads: broken: is a text file, not a shared library; take it out of the folder or install the "
          "plugin again\n"
          "comes back from every call: kept\n"
          "prints nothing: kept\n");
    const Outcome nothing = run(workspace, {.words = {"materials", "--check", "y.family"}});
    CHECK(nothing.status == 4);
    CHECK(nothing.out.empty());
    CHECK(nothing.err == "y.family: is not there; check the name of the plugin\n");
}

TEST_CASE("materials --check stands alone, and does not write over the plugin") {
    const Workspace workspace;
    workspace.write("x.family", "text");
    const Outcome named = run(workspace, {.words = {"materials", "steel", "--check", "x.family"}});
    CHECK(named.status == 2);
    CHECK(named.err == "ringfill: \"steel\" stands beside --check; leave one out\n");
    const Outcome over = run(workspace, {.words = {"materials", "--check", "x.family", "-o", "./x.family"}});
    CHECK(over.status == 2);
    CHECK(over.err ==
          "ringfill: \"./x.family\" is the plugin itself and would be overwritten; choose another name "
          "for -o\n");
    CHECK(workspace.read("x.family") == "text");
}
