#include <sstream>

#include <catch2/catch.hpp>

#include <ringfill/fault/printable.hpp>
#include <ringfill/report/text/layout.hpp>

using namespace ringfill;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

} // namespace

TEST_CASE("columns stand two blanks apart, texts from the left and numbers to the right") {
    CHECK(columns({{"item", "need"}, {"wire", "1.4 kg"}, {"gas nozzles", "2"}}, {false, true}) ==
          std::vector<std::string>{"item           need", "wire         1.4 kg", "gas nozzles       2"});
}

TEST_CASE("blanks at the end of a row are left out") {
    CHECK(columns({{"a", "note"}, {"b", ""}, {"", ""}}, {false, false}) ==
          std::vector<std::string>{"a  note", "b", ""});
}

TEST_CASE("a character of several bytes counts as one column") {
    // × and ² take two bytes each, ½ too.
    CHECK(columns({{"3 × 5", "mm²"}, {"3 x 5½", "mm"}}, {false, true}) ==
          std::vector<std::string>{"3 × 5   mm²", "3 x 5½   mm"});
}

TEST_CASE("rows may have fewer cells than there are columns, and there may be none") {
    CHECK(columns({{"one"}, {"two", "three"}}, {false, false}) ==
          std::vector<std::string>{"one", "two  three"});
    CHECK(columns({}, {false}).empty());
    CHECK(columns({{}}, {false}) == std::vector<std::string>{""});
}

TEST_CASE("a text is broken at blanks and hangs under its first word") {
    CHECK(wrapped("one two three four", "- ", 11) == "- one two\n  three\n  four\n");
    CHECK(wrapped("one two", "- ", 9) == "- one two\n"); // just as wide as allowed
    CHECK(wrapped("one two", "- ", 8) == "- one\n  two\n");
}

TEST_CASE("an empty text is its beginning alone, without blanks at the end") {
    CHECK(wrapped("", "") == "\n");
    CHECK(wrapped("", "- ") == "-\n");
}

TEST_CASE("a word that is too long stands alone and is cut with an ellipsis") {
    const std::string text = wrapped("a " + std::string(200, 'x') + " b", "- ", 20);
    const auto lines = lines_of(text);
    REQUIRE(lines.size() == 3);
    CHECK(lines[0] == "- a");
    CHECK(lines[1] == "  " + std::string(17, 'x') + "…");
    CHECK(lines[2] == "  b");
}

TEST_CASE("no line is longer than the width, whatever the text") {
    const std::string eight = "größe×½² ";
    std::string many;
    for (int i = 0; i < 100; ++i)
        many += eight;
    for (const std::string& text :
         {many, std::string(500, 'x'), std::string(500, ' '), "a" + std::string(90, ' ') + "b",
          std::string("tab\tand\nbreak and more words to fill the line up to its end"),
          std::string("\xFF\xFE broken \xC3")})
        for (const std::size_t width : {10U, 25U, 79U})
            for (const std::string& line : lines_of(wrapped(text, "! ", width))) {
                CAPTURE(line, width);
                CHECK(count_characters(line) <= width);
                CHECK((line.empty() || line.back() != ' '));
            }
}

TEST_CASE("characters of several bytes are counted, not their bytes") {
    CHECK(wrapped("ååååå ååååå", "", 11) == "ååååå ååååå\n"); // 11 characters, 21 bytes
    CHECK(wrapped("ååååå ååååå", "", 10) == "ååååå\nååååå\n");
}

TEST_CASE("several blanks between words are one") {
    CHECK(wrapped("  one   two  ", "", 20) == "one two\n");
}

TEST_CASE("what could disturb a terminal is replaced") {
    CHECK(wrapped("red \x1b[31m off", "") == "red \uFFFD[31m off\n");
    CHECK(wrapped("line\nbreak", "") == "line\uFFFDbreak\n");
}
