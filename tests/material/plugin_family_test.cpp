#include <catch2/catch.hpp>

#include <ringfill/material/registry.hpp>

#include "document/own_folder.hpp"
#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Registry registry_with(const std::vector<std::string>& table_folders) {
    Shelf shelf{{RINGFILL_TABLES}};
    shelf.folders.insert(shelf.folders.end(), table_folders.begin(), table_folders.end());
    return Registry(shelf, {RINGFILL_PLUGIN_FOLDER}, read_sources(table_files(shelf, "sources.json")));
}

} // namespace

TEST_CASE("every family of the product stands ready with its plugin, and every steel leads back to its row") {
    const Registry registry = registry_with({});
    CHECK(registry.missing().empty());
    std::vector<std::string> names;
    for (const Family& family : registry.families())
        names.push_back(family.name);
    CHECK(names == std::vector<std::string>{"bronze", "cast_iron", "hardfacing", "manganese_steel", "nickel",
                                            "stainless", "steel"});
    std::vector<Fault> faults;
    for (const Base& one : family_of(registry, "steel/C45").bases)
        CHECK(find_base(registry, "steel/" + one.name, "base", faults) == &one);
    CHECK(find_base(registry, "steel/c45", "bores[0].base", faults) == nullptr);
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) ==
          "bores[0].base: \"steel/c45\" is not a known base metal; did you mean \"steel/C45\"?");
}

TEST_CASE("a table of the shop adds a grade with its practice row to a family with rules") {
    const OwnFolder folder;
    folder.put("families/steel.json", family_text(fmt::format(R"("bases": {{
        "C45": {{{0}}},
        "ours": {{{0}, "preheat_groups": ["shop"],
                 "practice": {{"rows": [{{"practice_degC": [150, 200, "practice"]}}]}}}}}},
        "preheat_groups": {{"shop": {{"rows": [{{"minimum_degC": [120, "practice"]}}]}}}})",
                                                              base),
                                                  "steel"));
    const Registry registry = registry_with({folder.path()});
    CHECK(registry.missing().empty());
    std::vector<Fault> faults;
    const Base* ours = find_base(registry, "steel/ours", "", faults);
    REQUIRE(ours);
    CHECK(ours->practice.has_value());
    CHECK(ours->preheat_groups == std::vector<std::string>{"shop"});
    CHECK(find_base(registry, "steel/C45", "", faults)->standard == "s");
    CHECK_FALSE(find_base(registry, "steel/C45", "", faults)->practice); // an entry is replaced whole
    CHECK(find_base(registry, "steel/4140", "", faults)->practice);
    CHECK(family_of(registry, "steel/ours").plugin);
    CHECK(faults.empty());
}

TEST_CASE("a plugin that cannot be read is missing for now, and its family stands ready once it can") {
    const OwnFolder folder;
    std::filesystem::create_symlink(folder / "late", folder / "steel.family");
    const Shelf shelf{{RINGFILL_TABLES}};
    const Registry registry(shelf, {folder.path()}, read_sources(table_files(shelf, "sources.json")));
    for (int round = 0; round < 2; ++round) {
        REQUIRE(registry.missing("steel").size() == 1);
        CHECK(to_string(registry.missing("steel").front().why) ==
              folder / "steel.family" + ": cannot be read: No such file or directory; check the name");
    }
    CHECK(registry.family("steel") == nullptr);
    std::filesystem::copy_file(std::string(RINGFILL_PLUGIN_FOLDER) + "/steel.family", folder / "late");
    CHECK(registry.missing("steel").empty());
    CHECK(registry.missing().size() == 1); // cast iron, which has rules too
    CHECK(family_of(registry, "steel/C45").plugin);
}
