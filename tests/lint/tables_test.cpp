#include <catch2/catch.hpp>

#include <filesystem>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/whole_file.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/sourced.hpp>

#include "source_tree.hpp"

using namespace ringfill;

namespace {

const Bibliography& sources() {
    static const Bibliography read = read_sources(table_files(Shelf{{RINGFILL_TABLES}}, "sources.json"));
    return read;
}

/// "path" of each number in a table that stands neither in a list which ends in a known source key nor in a
/// row that names one as its source.
void unsourced(const Value& value, const Bibliography& known, const std::string& path, bool sourced,
               std::vector<std::string>& found) {
    if (value.number() && !sourced)
        found.push_back(path);
    if (const auto* list = value.list()) {
        const std::string* key = list->empty() ? nullptr : list->back().text();
        for (const Value& element : *list)
            unsourced(element, known, path, sourced || (key && known.contains(*key)), found);
    }
    if (const auto* members = value.object()) {
        const Value* named = value.find("source");
        const std::string* key = named ? named->text() : nullptr;
        for (const Member& member : *members)
            unsourced(member.value, known, member_path(path, member.name),
                      key && known.contains(*key) && !member.value.object(), found);
    }
}

/// The keys of a bibliography that no text quotes.
std::vector<std::string> unused(const Bibliography& known, const std::string& texts) {
    std::vector<std::string> found;
    for (const auto& [key, source] : known)
        if (texts.find('"' + key + '"') == std::string::npos)
            found.push_back(key);
    return found;
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
        unsourced(table.root, sources(), "", false, found);
        INFO(path);
        CHECK(found == std::vector<std::string>());
        ++files;
    }
    CHECK(files >= 7);
}

TEST_CASE("the rule of sources finds a bare number and an unknown key") {
    const Document table = parse("t.json",
                                 R"({ "a": 7850, "b": [1, "practice"], "c": [2, "nowhere"],
                   "d": [{ "value": 3, "source": "practice" }, { "value": 4, "source": "nowhere" }, { "value": 5 }] })",
                                 Origin::table);
    std::vector<std::string> found;
    unsourced(table.root, sources(), "", false, found);
    CHECK(found == std::vector<std::string>{"a", "c", "d.value", "d.value"});
}

TEST_CASE("every source of the bibliography is used by a table, or by the code") {
    std::string all;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(RINGFILL_TABLES))
        if (entry.path().extension() == ".json" && entry.path().filename() != "sources.json")
            all += read_whole(entry.path().string(), 1'000'000);
    for (const testing::SourceFile& file : testing::sources_under({"lib", "plugins"}))
        for (const std::string& line : file.lines)
            all += line + '\n';
    CHECK(unused(sources(), all) == std::vector<std::string>());
}

TEST_CASE("the rule of used sources finds a key that nobody quotes") {
    const Bibliography known = {{"D1.1", {}}, {"EN1011-2", {}}, {"EN1011-2-B", {}}};
    CHECK(unused(known, R"({ "a": [1, "D1.1"], "b": [2, "EN1011-2-B"] })") ==
          std::vector<std::string>{"EN1011-2"});
}
