#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

#include "plugins/plugin_folder.hpp"

using namespace ringfill::testing;
namespace fs = std::filesystem;

TEST_CASE("a plugin that does not load is told in materials, and the rest keeps working") {
    for (const std::string name :
         {"other_version", "no_symbol", "null_family", "bad_name", "size_zero", "table_not_utf8", "bad_json",
          "no_density", "fast_math", "undefined_symbol"}) {
        CAPTURE(name);
        const PluginFolder mine({name});
        const Outcome listed = mine.run({"materials"});
        CHECK(listed.status == 0);
        CHECK(listed.err.empty());
        CHECK(listed.out.find("NOT LOADED\n! ") != std::string::npos);
        CHECK(on_one_line(listed.out).find("! " + mine.file(name)) != std::string::npos);
        CHECK(listed.out.find("\nsteel\n  from version ") != std::string::npos);
        CHECK(mine.run({"take", "-"}, job_of("steel/C45")).status == 0);
    }
}

TEST_CASE("a job that needs a family that did not load ends with status 3 and the reason") {
    const PluginFolder mine({"null_family"});
    const Outcome outcome = mine.run({"heat", "-"}, job_of("null_family/B1"));
    CHECK(outcome.status == 3);
    CHECK(outcome.out.empty());
    CHECK(outcome.err ==
          mine.file("null_family") + ": has no family name; build the plugin again with that put right\n");
}

TEST_CASE("a plugin that breaks a rule when it is asked fails the job that asked, and no other") {
    const PluginFolder mine({"celsius"});
    const Outcome outcome = mine.run({"heat", "-"}, job_of("bad/B1"));
    CHECK(outcome.status == 3);
    CHECK(outcome.out.empty());
    CHECK(outcome.err ==
          mine.file("celsius") +
              ": gave the minimum of the method \"M\" as 100 K, below 200 K (preheat of bad/B1); "
              "give it in kelvin, not in degrees Celsius\n");
    CHECK(mine.run({"heat", "-"}, job_of("steel/C45")).status == 0);
}

TEST_CASE("of two plugins of one family neither is taken, and both are named") {
    const PluginFolder mine({"twin_a", "twin_b"});
    const std::string first = mine.file("twin_a") + ": is a plugin of the family bad, and so is " +
                              mine.file("twin_b") + "; keep one of the two";
    const std::string second = mine.file("twin_b") + ": is a plugin of the family bad, and so is " +
                               mine.file("twin_a") + "; keep one of the two";
    const Outcome listed = mine.run({"materials"});
    CHECK(listed.status == 0);
    CHECK(on_one_line(listed.out).find("! " + first) != std::string::npos);
    CHECK(on_one_line(listed.out).find("! " + second) != std::string::npos);
    const Outcome outcome = mine.run({"take", "-"}, job_of("bad/B1"));
    CHECK(outcome.status == 3);
    CHECK(outcome.err == first + "\n");
}

TEST_CASE("a good plugin of a user's folder is a family like the others") {
    const PluginFolder mine({"good"});
    const Outcome listed = mine.run({"materials"});
    CHECK(listed.out.starts_with("bad\n  from version 1, "));
    const Outcome outcome = mine.run({"heat", "-", "--json"}, job_of("bad/B1"));
    CHECK(outcome.status == 0);
    CHECK(outcome.out.find("\"preheat_by\": \"M\"") != std::string::npos);
}

TEST_CASE("a plugin whose file is called like another family is found by the family that it brings") {
    const PluginFolder mine({"good"});
    fs::rename(mine.folder() / "good.family", mine.folder() / "stainless.family");
    CHECK(mine.run({"heat", "-"}, job_of("bad/B1")).status == 0);
    CHECK(mine.run({"heat", "-"}, job_of("stainless/304")).status == 0);
}

TEST_CASE("a broken table of the user fails every job beside it and the check of any") {
    const Workspace workspace;
    fs::create_directories(workspace.folder() / "own" / "families");
    std::ofstream(workspace.folder() / "own" / "families" / "nickel.json") << "7";
    const auto with_own = [&](const std::string& command, const std::string& base) {
        return run(workspace, {.words = {command, "-", "--tables", "own"}, .input = job_of(base)});
    };
    const std::string why = "own/families/nickel.json:1:1: 7 is a number, not an object in braces; write the "
                            "fields of a material family in braces\n    7\n    ^\n";
    CHECK(with_own("take", "steel/C45").status == 3);
    CHECK(with_own("take", "steel/C45").err == why);
    CHECK(with_own("take", "nickel/N04400").status == 3);
    CHECK(with_own("take", "nickel/N04400").err == why);
    CHECK(with_own("check", "steel/C45").status == 3);
    CHECK(with_own("check", "steel/C45").err == why);
}

TEST_CASE("a folder of plugins that everyone may write is not looked into") {
    const PluginFolder mine({"good"});
    fs::permissions(mine.folder(), fs::perms::all);
    const Outcome listed = mine.run({"materials"});
    CHECK(listed.status == 0);
    CHECK(listed.out.find("NOT LOADED") != std::string::npos);
    CHECK_FALSE(listed.out.starts_with("bad\n"));
}

TEST_CASE("a plugin folder that is not there is refused") {
    const Workspace workspace;
    const Outcome outcome = run(workspace, {.words = {"materials", "--plugins", "nowhere"}});
    CHECK(outcome.status == 4);
    CHECK(outcome.err == "nowhere: is not a folder of plugins; check the name\n");
    const Outcome by_environment =
        run(workspace, {.words = {"materials"}, .environment = {{"RINGFILL_PLUGINS", "nowhere"}}});
    CHECK(by_environment.status == 4);
}

TEST_CASE("folders of the environment are looked into, parted by colons") {
    const PluginFolder mine({"good"});
    const Outcome listed =
        run(mine.workspace(), {.words = {"materials"}, .environment = {{"RINGFILL_PLUGINS", ":mine:"}}});
    CHECK(listed.out.find("from version 1, ") != std::string::npos);
}
