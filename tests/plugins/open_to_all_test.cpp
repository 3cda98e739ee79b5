#include <catch2/catch.hpp>

#include <filesystem>

#include <ringfill/material/search.hpp>

#include "document/own_folder.hpp"
#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

namespace fs = std::filesystem;

void copy_good(const OwnFolder& folder, const std::string& name) {
    fs::create_directories(fs::path(folder / name).parent_path());
    fs::copy_file(plugin_file("good"), folder / name);
}

constexpr fs::perms writable_by_all = fs::perms(0757);
constexpr fs::perms like_tmp = fs::perms(01777);

} // namespace

TEST_CASE("a plugin that everyone may write to is not loaded") {
    const OwnFolder folder;
    copy_good(folder, "good.family");
    CHECK(refused_loading(folder / "good.family") == "accepted");
    fs::permissions(folder / "good.family", writable_by_all);
    CHECK(refused_loading(folder / "good.family") == "may be written to by everyone, so it is not loaded; "
                                                     "take that right away (chmod o-w) if you trust the "
                                                     "file");
}

TEST_CASE("a plugin in a folder that everyone may write to is not loaded") {
    for (const fs::perms rights : {writable_by_all, like_tmp}) {
        const OwnFolder folder;
        copy_good(folder, "open/good.family");
        fs::permissions(folder / "open", rights);
        CHECK(refused_loading(folder / "open/good.family") ==
              "stands in a folder that everyone may write to, so it is not loaded; move it to a folder of "
              "your own");
    }
}

TEST_CASE("a link in a safe folder does not hide where the file is") {
    const OwnFolder folder;
    copy_good(folder, "open/good.family");
    fs::permissions(folder / "open", writable_by_all);
    fs::create_directory(folder / "safe");
    fs::create_symlink(folder / "open/good.family", folder / "safe/good.family");
    CHECK(refusal(Origin::table, [&] { load_plugin(folder / "safe/good.family"); }) ==
          folder / "open/good.family" + ": stands in a folder that everyone may write to, so it is not "
                                        "loaded; move it to a folder of your "
                                        "own");
}

TEST_CASE(
    "plugins are found by folder, then by name, each once; hidden ones, others and folders below are not") {
    const OwnFolder folder;
    for (const char* name : {"b/zinc.family", "b/alloy.family", "a/steel.family", "b/.hidden.family",
                             "b/.family", "b/readme.txt", "b/below/deep.family", "b/family"})
        folder.put(name, "x");
    fs::create_symlink(folder / "a/steel.family", folder / "b/linked.family");
    const PluginSearch found = find_plugins({folder / "b", folder / "a", folder / "b/../b"});
    CHECK(found.files == std::vector<std::string>{folder / "b/alloy.family", folder / "a/steel.family",
                                                  folder / "b/zinc.family"});
    CHECK(found.refused.empty());
}

TEST_CASE("a folder that cannot be trusted or searched is told, and the others are searched all the same") {
    const OwnFolder folder;
    folder.put("open/a.family", "x");
    folder.put("safe/b.family", "x");
    fs::permissions(folder / "open", writable_by_all);
    const PluginSearch found =
        find_plugins({folder / "open", folder / "nowhere", folder / "safe/b.family", folder / "safe"});
    CHECK(found.files == std::vector<std::string>{folder / "safe/b.family"});
    REQUIRE(found.refused.size() == 3);
    CHECK(to_string(found.refused[0]) ==
          folder / "open" +
              ": may be written to by everyone, so no plugin is taken from it; take that right away "
              "(chmod o-w), or name a folder of your own");
    CHECK(to_string(found.refused[1]) == folder / "nowhere" +
                                             ": cannot be searched for plugins: No such file or "
                                             "directory; check the name of the folder");
    CHECK(to_string(found.refused[2]) == folder / "safe/b.family" +
                                             ": cannot be searched for plugins: Not a "
                                             "directory; check the name of the folder");
}

TEST_CASE("a link that leads nowhere is kept, so that loading it tells why") {
    const OwnFolder folder;
    fs::create_symlink(folder / "gone", folder / "a.family");
    const PluginSearch found = find_plugins({folder.path()});
    REQUIRE(found.files == std::vector<std::string>{folder / "a.family"});
    CHECK(refusal(Origin::file, [&] { load_plugin(found.files.front()); }) ==
          folder / "a.family" + ": cannot be read: No such file or directory; check the name");
}
