#include <catch2/catch.hpp>

#include <regex>

#include "source_tree.hpp"

using ringfill::testing::SourceFile;
using ringfill::testing::sources_under;

namespace {

/// Lines that read a fact out of a text meant for people: its begin, a part of it, or the whole compared.
std::vector<std::string> readers_of_text(const SourceFile& file) {
    static const std::regex searched(
        R"(.*(\.|->)(text|item|because|why)\.(find|substr|starts_with|ends_with|compare)\(.*)");
    static const std::regex compared(R"(.*(\.|->)(text|item|because|why) ?[!=]= ?".+)");
    static const std::regex marked(R"(.*starts_with\("! .*)");
    std::vector<std::string> found;
    for (const std::string& line : file.lines)
        for (const std::regex* rule : {&searched, &compared, &marked})
            if (std::regex_match(line, *rule))
                found.push_back(file.path + ": " + line);
    return found;
}

} // namespace

TEST_CASE("no fact is read out of a text meant for people") {
    for (const char* room : {"take", "quote", "plan", "report"})
        for (const SourceFile& file : sources_under({std::string("lib/ringfill/") + room}))
            CHECK(readers_of_text(file) == std::vector<std::string>());
}

TEST_CASE("the rule of facts finds a text that is searched, compared or marked") {
    CHECK(readers_of_text({"a.cpp", {"if (need.item.starts_with(form))"}}).size() == 1);
    CHECK(readers_of_text({"a.cpp", {"return line->text.substr(2);"}}).size() == 1);
    CHECK(readers_of_text({"a.cpp", {"return need.item == \"generator fuel\";"}}).size() == 1);
    CHECK(readers_of_text({"a.cpp", {"if (words.starts_with(\"! \"))"}}).size() == 1);
    CHECK(readers_of_text({"a.cpp", {"page.text += caution.text;", "if (need.kind == Kind::wire)"}}).empty());
}
