#include <catch2/catch.hpp>

#include <filesystem>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;

namespace {

/// "path" of each number in a table that does not stand in a list which ends in a known source key.
void unsourced(const Value& value, const Bibliography& known, const std::string& path, bool sourced,
               std::vector<std::string>& found) {
    if (value.number() && !sourced)
        found.push_back(path);
    if (const auto* list = value.list()) {
        const std::string* key = list->empty() ? nullptr : list->back().text();
        for (const Value& element : *list)
            unsourced(element, known, path, key && known.contains(*key), found);
    }
    if (const auto* members = value.object())
        for (const Member& member : *members)
            unsourced(member.value, known, member_path(path, member.name), false, found);
}

} // namespace

TEST_CASE("every number in the tables names a source of the bibliography") {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(RINGFILL_TABLES)) {
        if (entry.path().extension() != ".json")
            continue;
        const std::string path = entry.path().string();
        const Document table = parse(path, read_whole(path, 1'000'000), Origin::table);
        std::vector<std::string> found;
        unsourced(table.root, testing::shop().sources, "", false, found);
        INFO(path);
        CHECK(found == std::vector<std::string>());
        ++files;
    }
    CHECK(files >= 6);
}

TEST_CASE("the rule of sources finds a bare number and an unknown key") {
    const Document table =
        parse("t.json", R"({ "a": 7850, "b": [1, "practice"], "c": [2, "nowhere"] })", Origin::table);
    std::vector<std::string> found;
    unsourced(table.root, testing::shop().sources, "", false, found);
    CHECK(found == std::vector<std::string>{"a", "c"});
}

TEST_CASE("every source of the bibliography is used by a table, or by the program itself") {
    std::string all;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(RINGFILL_TABLES))
        if (entry.path().extension() == ".json" && entry.path().filename() != "sources.json")
            all += read_whole(entry.path().string(), 1'000'000);
    for (const auto& [key, source] : testing::shop().sources)
        if (key != "own" &&
            key != "ISO15614-1") { // own is reserved; the other is the rule for the fastest travel
            INFO(key);
            CHECK(all.find('"' + key + '"') != std::string::npos);
        }
}
