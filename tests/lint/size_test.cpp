#include <catch2/catch.hpp>

#include <regex>

#include "source_tree.hpp"

using ringfill::testing::SourceFile;
using ringfill::testing::sources_under;

namespace {

constexpr std::size_t longest_file = 250;
constexpr std::size_t longest_function = 60;

/// Whether a line at the left edge opens a function body or its signature, rather than a type or a namespace.
bool opens_function(const std::string& line) {
    static const std::regex other(
        "(namespace|class|struct|enum|union|extern|constexpr std::array|const std::|using|#|//|template).*");
    return !line.empty() && line.front() != ' ' && line.front() != '}' &&
           line.find('(') != std::string::npos && !std::regex_match(line, other);
}

/// "file:line has n lines" for each function at namespace scope that is longer than a screen.
std::vector<std::string> long_functions(const SourceFile& file) {
    std::vector<std::string> found;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        const std::string& line = file.lines[i];
        if (begin == 0 && opens_function(line) && line.back() != ';')
            begin = i + 1;
        if (line == "}" && begin > 0 && i + 2 - begin > longest_function)
            found.push_back(file.path + ":" + std::to_string(begin) + " has " +
                            std::to_string(i + 2 - begin) + " lines");
        if (line == "}" || line == "};" || (!line.empty() && line.front() != ' ' && line.back() == ';'))
            begin = 0;
    }
    return found;
}

} // namespace

TEST_CASE("no file is longer than one idea, no function than a screen") {
    for (const SourceFile& file : sources_under({"lib", "cli", "tests"})) {
        INFO(file.path);
        CHECK(file.lines.size() <= longest_file);
        CHECK(long_functions(file) == std::vector<std::string>());
    }
}

TEST_CASE("the rule of sizes finds a long function and leaves a long table alone") {
    SourceFile function{"a.cpp", {"int sum(int a,", "        int b) {"}};
    function.lines.insert(function.lines.end(), longest_function - 2, "    ++a;");
    function.lines.push_back("}");
    CHECK(long_functions(function) == std::vector<std::string>{"a.cpp:1 has 61 lines"});
    SourceFile table{"b.cpp", {"constexpr std::array rows = {"}};
    table.lines.insert(table.lines.end(), 2 * longest_function, "    Row{},");
    table.lines.push_back("};");
    CHECK(long_functions(table).empty());
}
