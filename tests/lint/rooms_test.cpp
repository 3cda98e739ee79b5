#include <catch2/catch.hpp>

#include <map>
#include <regex>

#include "source_tree.hpp"

using ringfill::testing::SourceFile;
using ringfill::testing::sources_under;

namespace {

/// The rooms in the order the data flows: a room may include itself and rooms above it.
const std::vector<std::string> rooms = {
    "fault",    "document", "units",       "working",     "table",      "job",         "book",       "survey",
    "material", "weld",     "heat",        "boring",      "day",        "caution",     "take",       "quote",
    "plan",     "say",      "report/text", "report/json", "report/csv", "report/draw", "report/page"};

std::size_t rank(const std::string& room) {
    return static_cast<std::size_t>(std::find(rooms.begin(), rooms.end(), room) - rooms.begin());
}

/// The room of lib/ringfill/ROOM/file, or nothing for a file that lies elsewhere.
std::string room_of(const std::string& path) {
    static const std::regex in_room("lib/ringfill/((?:report/)?[a-z]+)/.*");
    std::smatch found;
    return std::regex_match(path, found, in_room) ? found[1].str() : std::string();
}

std::vector<std::string> faults_of(const SourceFile& file) {
    static const std::regex include(R"(\s*#include <ringfill/((?:report/)?[a-z]+)/.*)");
    std::vector<std::string> faults;
    for (const std::string& line : file.lines) {
        std::smatch found;
        if (!std::regex_match(line, found, include))
            continue;
        if (rank(found[1]) == rooms.size() || rank(found[1]) > rank(room_of(file.path)))
            faults.push_back(file.path + ": " + line);
    }
    return faults;
}

/// The public door stands before the rooms and shows what comes out of the last: it includes them all.
bool is_public_door(const std::string& path) {
    return path == "lib/ringfill/ringfill.hpp" || path == "lib/ringfill/ringfill.cpp";
}

} // namespace

TEST_CASE("a room includes only rooms above it, and none the public door") {
    std::size_t judged = 0;
    for (const SourceFile& file : sources_under({"lib"})) {
        if (is_public_door(file.path))
            continue;
        INFO(file.path);
        for (const std::string& line : file.lines)
            CHECK(line != "#include <ringfill/ringfill.hpp>");
        CHECK(rank(room_of(file.path)) < rooms.size());
        CHECK(faults_of(file) == std::vector<std::string>());
        ++judged;
    }
    CHECK(judged > 50);
}

TEST_CASE("the rule of rooms finds an include that points down") {
    const SourceFile wrong{"lib/ringfill/weld/bead.hpp",
                           {"#include <ringfill/take/need.hpp>", "#include <string>"}};
    CHECK(faults_of(wrong).size() == 1);
    const SourceFile right{"lib/ringfill/take/need.hpp", {"#include <ringfill/weld/bead.hpp>"}};
    CHECK(faults_of(right).empty());
}

TEST_CASE("a heavy header stands in the one file that needs it") {
    const std::map<std::string, std::string> homes = {
        {"<CLI/CLI.hpp>", "cli/options.cpp"},
        {"<boost/json/stream_parser.hpp>", "lib/ringfill/document/scan_number.cpp"}};
    for (const SourceFile& file : sources_under({"lib", "cli"}))
        for (const std::string& line : file.lines)
            for (const auto& [header, home] : homes)
                if (line == "#include " + header)
                    CHECK(file.path == home);
}
