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

} // namespace

TEST_CASE("no tolerance by default, no foreign namespace taken in whole") {
    for (const SourceFile& file : sources_under({"lib", "cli", "tests"}))
        for (const std::string& line : file.lines)
            for (const std::string& word : banned) {
                INFO(file.path << ": " << line);
                CHECK(line.find(word) == std::string::npos);
            }
}
