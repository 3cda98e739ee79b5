#include <catch2/catch.hpp>

#include "source_tree.hpp"

using ringfill::testing::SourceFile;
using ringfill::testing::sources_under;

namespace {

/// Words that may not stand in the sources, in two halves so that this file does not hold them itself.
const std::vector<std::string> banned = {
    std::string("App") + "rox", // a tolerance by default hides its size
    std::string("using namespace s") + "td;",
    std::string("using namespace bo") + "ost;",
};

/// What older libraries lack: the library and the families must compile with them too.
const std::vector<std::string> too_new = {"from_chars", "to_chars", "bit_cast", "std::ranges"};

std::vector<std::string> too_new_in(const SourceFile& file) {
    std::vector<std::string> found;
    for (const std::string& line : file.lines)
        for (const std::string& word : too_new)
            if (line.find(word) != std::string::npos)
                found.push_back(file.path + ": " + line);
    return found;
}

} // namespace

TEST_CASE("the library and the families do without what older libraries lack") {
    for (const SourceFile& file : sources_under({"lib", "plugins"}))
        CHECK(too_new_in(file).empty());
    CHECK(too_new_in({"lib/ringfill/weld/bead.cpp", {"auto x = std::bit_cast<int>(y);", "int z;"}}).size() ==
          1);
}

TEST_CASE("no tolerance by default, no foreign namespace taken in whole") {
    for (const SourceFile& file : sources_under({"lib", "cli", "tests"}))
        for (const std::string& line : file.lines)
            for (const std::string& word : banned) {
                INFO(file.path << ": " << line);
                CHECK(line.find(word) == std::string::npos);
            }
}
