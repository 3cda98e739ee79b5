#include <catch2/catch.hpp>

#include <random>
#include <string>
#include <vector>

#include <ringfill/fault/printable.hpp>

using namespace ringfill;

TEST_CASE("characters are counted, not bytes") {
    CHECK(count_characters("") == 0);
    CHECK(count_characters("abc") == 3);
    CHECK(count_characters("½″°\U0001F527") == 4);
    CHECK(count_characters("\xFF\xFE") == 2);
    CHECK(count_characters("\xE2\x80") == 2); // cut in the middle of a character
    CHECK(count_characters("\xC0\xAF") == 2); // overlong slash: RFC 3629 section 3 forbids it (from memory)
    CHECK(count_characters("\xED\xA0\x80") == 3); // half of a surrogate pair: forbidden in the same section
    CHECK(count_characters("\xF4\x90\x80\x80") == 4); // past U+10FFFF
}

TEST_CASE("the last characters of a text are whole ones") {
    CHECK(last_characters("3½ in", 4) == "½ in");
    CHECK(last_characters("3½ in", 5) == "3½ in");
    CHECK(last_characters("3½ in", 50) == "3½ in");
    CHECK(last_characters("3½ in", 0).empty());
    CHECK(last_characters("", 3).empty());
}

TEST_CASE("what is readable stays as it is") {
    CHECK(printable("3-9/16 in, 40 °F, ½″, Ø90, Ж, 漢, \U0001F527") ==
          "3-9/16 in, 40 °F, ½″, Ø90, Ж, 漢, \U0001F527");
    CHECK(printable("").empty());
}

TEST_CASE("what could disturb a terminal or turn a line round becomes U+FFFD") {
    CHECK(printable("a\nb\tc\rd\x1B[0m\x7F") == "a\uFFFDb\uFFFDc\uFFFDd\uFFFD[0m\uFFFD");
    CHECK(printable(std::string("a\0b", 3)) == "a\uFFFDb");
    CHECK(printable("a\u0085b\u009Bc") == "a\uFFFDb\uFFFDc"); // eight-bit controls
    CHECK(printable("a\u202Eb\u2066c\u200Fd\u061Ce") == "a\uFFFDb\uFFFDc\uFFFDd\uFFFDe"); // writing direction
    CHECK(printable("a\u2028b\u2029c") == "a\uFFFDb\uFFFDc");                 // line and paragraph separators
    CHECK(printable("a\u200Bb\uFEFFc\U000E0041") == "a\uFFFDb\uFFFDc\uFFFD"); // unseen signs
    CHECK(printable("a\xFFz\xE2\x82") == "a\uFFFDz\uFFFD\uFFFD");             // no UTF-8
}

TEST_CASE("a long text is cut at a character and says so") {
    CHECK(printable("½½½½", 3) == "½½½…");
    CHECK(printable("½½½", 3) == "½½½");
    CHECK(count_characters(printable(std::string(5'000, 'x'))) == 201);
    CHECK(in_quotes("90.4") == "\"90.4\"");
    CHECK(in_quotes(std::string(61, 'x')) == '"' + std::string(60, 'x') + "…\"");
}

namespace {

/// Character by character from the front.
std::vector<std::size_t> beginnings(const std::string& text) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < text.size(); i += character_at(text, i).bytes)
        all.push_back(i);
    return all;
}

} // namespace

TEST_CASE("long texts are counted and cut as if character by character") {
    const std::vector<std::string> pieces = {"a",  "plain words ", "½",    "漢",   "\U0001F527",
                                             "\n", "\xFF",         "\x80", "\xE2", "\xF0\x9F"};
    std::mt19937 random(11);
    std::uniform_int_distribution<std::size_t> piece(0, pieces.size() - 1);
    for (int round = 0; round < 400; ++round) {
        std::string text;
        for (int i = 0; i < round % 60; ++i)
            text += pieces[piece(random)];
        const auto begins = beginnings(text);
        CHECK(count_characters(text) == begins.size());
        for (const std::size_t count : {std::size_t{1}, std::size_t{5}, std::size_t{20}}) {
            const std::size_t from = begins.size() > count ? begins[begins.size() - count] : 0;
            CHECK(last_characters(text, count) == text.substr(from));
        }
    }
}
