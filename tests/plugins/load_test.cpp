#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/parse.hpp>
#include <ringfill/material/family.hpp>
#include <ringfill/material/guard.hpp>

#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

using Refusal = std::pair<std::string, std::string>;

const std::string again = "; build the plugin again with that put right";

/// Each breaks one rule that is seen when a plugin is loaded; the whole message after its name.
const std::vector<Refusal> refused_when_loaded = {
    {"other_version",
     "was built for version 2 of the plugin interface; this program speaks 1; build it with this "
     "program's ringfill/material/abi.h"},
    {"no_symbol",
     "is a shared library, but no plugin: it does not export ringfill_material_v1; take it out of the "
     "folder, or export that symbol"},
    {"null_family", "has no family name" + again},
    {"empty_family", "has an empty family name" + again},
    {"bad_name",
     "has the family name \"Bad-1\", which is not a lower-case letter and at most 39 more letters, digits "
     "and _" +
         again},
    {"long_name",
     "has the family name \"abcdefghijklmnopqrstuvwxyzabcdefghijklmno\", which is not a lower-case letter "
     "and at most 39 more letters, digits and _" +
         again},
    {"size_zero", "gives the size of its struct as 0 bytes; it must be 48 to 4096; set size to "
                  "sizeof(rf_material_plugin)"},
    {"size_short", "gives the size of its struct as 40 bytes; it must be 48 to 4096; set size to "
                   "sizeof(rf_material_plugin)"},
    {"size_absurd", "gives the size of its struct as 4000000000 bytes; it must be 48 to 4096; set size to "
                    "sizeof(rf_material_plugin)"},
    {"null_version", "does not say its version" + again},
    {"long_version", "has a version of more than 40 bytes" + again},
    {"unclean_version", "has a version that is not clean UTF-8 text" + again},
    {"no_table", "brings no table" + again},
    {"empty_table", "brings no table" + again},
    {"long_table", "brings a table of 4000001 bytes; 4000000 is the most" + again},
    {"table_not_utf8", "brings a table that is not UTF-8 at byte 9" + again},
    {"fast_math", "changes the floating-point mode of the program when it is loaded; build it again without "
                  "-ffast-math, -Ofast and -funsafe-math-optimizations"},
    {"takes_output_when_loaded", "closes or replaces standard output when it is loaded; build the plugin "
                                 "again without what does that"},
    {"undefined_symbol",
     "cannot be loaded: undefined symbol: nowhere_answer; install what it needs, or build it again "
     "with -Wl,-z,defs, which names what is missing"},
};

} // namespace

TEST_CASE("each rule that is seen at loading is told with the file, what is wrong and what to do") {
    for (const auto& [name, message] : refused_when_loaded) {
        INFO(name);
        CHECK(refused_loading(plugin_file(name)) == message);
    }
}

TEST_CASE("a refused plugin is refused again, though its constructors do not run twice") {
    const ArithmeticModes before = arithmetic_modes();
    for (int round = 0; round < 3; ++round) {
        CHECK(refused_loading(plugin_file("fast_math")).starts_with("changes the floating-point mode"));
        CHECK(arithmetic_modes() == before);
    }
}

TEST_CASE("a good plugin is loaded, also twice, with all it says of itself copied") {
    for (int round = 0; round < 2; ++round) {
        const Plugin plugin = load_plugin(plugin_file("good"));
        CHECK(plugin.file == plugin_file("good"));
        CHECK(plugin.family == "bad");
        CHECK(plugin.version == "1");
        CHECK(plugin.table.starts_with("{ \"format\": \"ringfill-family/1\""));
        CHECK(plugin.answer != nullptr);
    }
}

TEST_CASE("a name that is not canonical leads to the same file") {
    const std::string round_about = std::string(RINGFILL_BAD_PLUGINS) + "/../bad/./good.family";
    CHECK(load_plugin(round_about).file == plugin_file("good"));
}

TEST_CASE("a plugin of a newer minor version is loaded, what it has more is not read") {
    const Plugin plugin = load_plugin(plugin_file("newer"));
    CHECK(plugin.version == "9");
    CHECK(plugin.answer == nullptr);
}

TEST_CASE("two plugins may claim one family as far as loading goes") {
    CHECK(load_plugin(plugin_file("twin_a")).family == load_plugin(plugin_file("twin_b")).family);
}

TEST_CASE("a table that is not JSON is refused when it is read, with its place") {
    const Plugin plugin = load_plugin(plugin_file("bad_json"));
    CHECK(refusal(Origin::table, [&] { parse("bad (its table)", plugin.table, Origin::table); }) ==
          "bad (its table):1:13: format: this is not JSON here; look for a missing comma, quote or bracket "
          "just before "
          "it\n    { \"format\": ringfill }\n                ^");
}

TEST_CASE("the table of a good plugin is read as any other") {
    const Plugin plugin = load_plugin(plugin_file("good"));
    const Family family = read_family("bad", {parse("table", plugin.table, Origin::table)}, test_sources());
    REQUIRE(family.bases.size() == 1);
    CHECK(family.bases.front().name == "B1");
}

TEST_CASE("a name that leads nowhere is told as such") {
    CHECK(refusal(Origin::file, [] { load_plugin("/nowhere/steel.family"); }) ==
          "/nowhere/steel.family: cannot be read: No such file or directory; check the name");
    CHECK(refusal(Origin::file, [] { load_plugin(""); }) == "no plugin is named; write the name of its file");
}
