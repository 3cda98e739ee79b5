#include <catch2/catch.hpp>

#include <set>
#include <string>

#include "lint/source_tree.hpp"

using namespace ringfill::testing;

// Plugins by one door; the other is the part of the program that writes a workbook.
TEST_CASE("libraries are loaded in two files, at once, kept to themselves and never closed") {
    std::set<std::string> loading;
    for (const SourceFile& file : sources_under({"lib", "cli", "plugins"}))
        for (const std::string& line : file.lines) {
            if (line.find("dlopen(") != std::string::npos) {
                loading.insert(file.path);
                CHECK(line.find("RTLD_NOW | RTLD_LOCAL)") != std::string::npos);
            }
            INFO(file.path << ": " << line);
            CHECK(line.find("dlclose(") == std::string::npos);
            CHECK(line.find("dlmopen(") == std::string::npos);
        }
    CHECK(loading ==
          std::set<std::string>{"cli/commands/workbook.cpp", "lib/ringfill/material/plugin_file.cpp"});
}
