#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

#include <ringfill/document/parse.hpp>

using namespace ringfill;

namespace {

Document read(std::string text) {
    return parse("job.json", std::move(text), Origin::job);
}

/// "line:column" where a value begins.
std::string begins(const Document& document, std::string_view path) {
    return to_string(place_at(document.text, value_at(document, path).begin));
}

/// The text of a value as it stands in the file.
std::string slice(const Document& document, std::string_view path) {
    const Value& value = value_at(document, path);
    return document.text.substr(value.begin, value.end - value.begin);
}

} // namespace

TEST_CASE("every kind of value is read") {
    const Document document =
        read(R"({"t": "x", "n": -1.5e2, "i": 90, "f": false, "z": null, "l": [1, [], {}], "o": {"": 1}})");
    CHECK(*document.root.find("t")->text() == "x");
    CHECK(*document.root.find("n")->number() == -150);
    CHECK(*document.root.find("i")->number() == 90);
    CHECK(*document.root.find("f")->flag() == false);
    CHECK(kind_in_words(*document.root.find("z")) == "null");
    CHECK(document.root.find("l")->list()->size() == 3);
    CHECK(*document.root.find("o")->find("")->number() == 1);
    CHECK(document.root.find("absent") == nullptr);
    CHECK(document.root.find("t")->find("x") == nullptr);
}

TEST_CASE("a file may hold a single value") {
    CHECK(*read("90").root.number() == 90);
    CHECK(*read(" -0.5e+10 ").root.number() == -0.5e10);
    CHECK(*read("\"x\"\n").root.text() == "x");
    CHECK(*read("true").root.flag());
    CHECK(read("[]").root.list()->empty());
}

TEST_CASE("keys and values know their place through comments, trailing commas and other line breaks") {
    const Document document =
        read("// first\r\n{\r\n  /* a */ \"a\" /* b */ : // c\r\n    [1, /* ø */ \"½\", 3,],\r\n"
             "  \"ø½\": \"½″\", \"b\": {\"c\": -0.5e+10/**/, },\r\n}\r\n");
    CHECK(begins(document, "") == "2:1");
    CHECK(begins(document, "a") == "4:5");
    CHECK(begins(document, "a[0]") == "4:6");
    CHECK(begins(document, "a[1]") == "4:17");
    CHECK(begins(document, "a[2]") == "4:22");
    CHECK(begins(document, "b") == "5:20"); // the signs before it take more bytes than columns
    CHECK(begins(document, "b.c") == "5:26");
    CHECK(slice(document, "a") == "[1, /* ø */ \"½\", 3,]");
    CHECK(slice(document, "a[1]") == "\"½\"");
    CHECK(slice(document, "ø½") == "\"½″\"");
    CHECK(slice(document, "b.c") == "-0.5e+10");
    CHECK(slice(document, "b") == "{\"c\": -0.5e+10/**/, }");
    const Value::Object& members = *document.root.object();
    CHECK(to_string(place_at(document.text, members[0].name_begin)) == "3:11");
    CHECK(to_string(place_at(document.text, members[1].name_begin)) == "5:3");
    CHECK(to_string(place_at(document.text, members[2].name_begin)) == "5:15");
}

TEST_CASE("every kind of value and every key begins and ends where it is written") {
    const std::vector<std::pair<std::string, std::string>> written = {
        {"\"text\"", "\"a \\\"b\\\" \\u00bd ½\""},
        {"\"empty\"", "\"\""},
        {"\"whole\"", "-12"},
        {"\"zero\"", "0"},
        {"\"fraction\"", "0.50"},
        {"\"power\"", "1.5E+3"},
        {"\"long\"", "0.12345678901234567890"},
        {"\"yes\"", "true"},
        {"\"no\"", "false"},
        {"\"nothing\"", "null"},
        {"\"list\"", "[ 1, [], ]"},
        {"\"object\"", "{ \"a\": {} }"},
        {"\"k\\u00e9y\"", "7"}};
    for (const std::string between : {"", " ", "/* , */", "\n// x\n\t"}) {
        std::string text = between + "{" + between;
        for (const auto& [key, value] : written) {
            text += key;
            text += between + ":" + between + value + between + "," + between;
        }
        text += "}" + between;
        const Document document = read(text);
        const Value::Object& members = *document.root.object();
        REQUIRE(members.size() == written.size());
        for (std::size_t i = 0; i < members.size(); ++i) {
            const Member& member = members[i];
            CHECK(text.substr(member.name_begin, written[i].first.size()) == written[i].first);
            CHECK(text.substr(member.value.begin, member.value.end - member.value.begin) ==
                  written[i].second);
        }
        CHECK(text.substr(document.root.begin, document.root.end - document.root.begin) ==
              text.substr(between.size(), text.size() - 2 * between.size()));
        const Value& inner = *document.root.find("list");
        CHECK(text.substr((*inner.list())[1].begin, 2) == "[]");
        CHECK((*inner.list())[1].end - (*inner.list())[1].begin == 2);
    }
}

TEST_CASE("comments may stand at every place between tokens") {
    for (const std::string comment : {"/**/", "/***/", "/****/", "/* **/", "/* * / \" { */", "// x \" { \n",
                                      "//\n", "/*\n\n*/", "// x\r\n", "/*\xFF*/", "//\n//\n", "/**//**/"}) {
        const std::string& c = comment;
        INFO(comment);
        const Document document =
            read(c + "{" + c + "\"a\"" + c + ":" + c + "1" + c + "," + c + "\"b\"" + c + ":" + c + "[" + c +
                 "\"x\"" + c + "," + c + "true" + c + "," + c + "]" + c + "," + c + "}" + c);
        CHECK(*document.root.find("a")->number() == 1);
        CHECK(slice(document, "a") == "1");
        CHECK(slice(document, "b[0]") == "\"x\"");
        CHECK(slice(document, "b[1]") == "true");
        CHECK(document.root.find("b")->list()->size() == 2);
    }
    CHECK(*read("1// the end without a line break").root.number() == 1);
    CHECK(read("{}// the end without a line break").root.object()->empty());
    CHECK(read("{}/* the end */").root.object()->empty());
    CHECK(slice(read("[1/*c*/,2//c\n]"), "[1]") == "2");
}

TEST_CASE("signs of comments inside a text are text") {
    const Document document = read(R"({"http://a": "b // c /* d */ ,]}", "e": 1})");
    CHECK(*document.root.find("http://a")->text() == "b // c /* d */ ,]}");
    CHECK(slice(document, "e") == "1");
}

TEST_CASE("escapes are read whole") {
    const Document document = read(R"({"a\"\\\/\b\f\n\r\t": "\u00bd \ud83d\udd27 \u0000|\\u00bd"})");
    CHECK(document.root.object()->front().name == "a\"\\/\b\f\n\r\t");
    CHECK(*document.root.object()->front().value.text() == std::string("½ \U0001F527 \0|\\u00bd", 16));
    CHECK(slice(document, "").size() == document.text.size());
}

TEST_CASE("numbers that people type are read to the last digit") {
    for (const std::string typed : {"0.1", "90.4", "93.45", "0.045", "7850", "1e-3", "-0.5e+10", "1E2", "0",
                                    "-0.0", "4.535", "14.968", "0.00000123", "123456789012", "1e15"}) {
        INFO(typed);
        CHECK(*read("[" + typed + "]").root.list()->front().number() == std::stod(typed));
        CHECK(*read(typed).root.number() == std::stod(typed));
    }
    CHECK(*read("9223372036854775808").root.number() == 0x1p63);                  // over 63 bits, within 64
    CHECK(*read("18446744073709551616").root.number() == 18446744073709551616.0); // over 64 bits
    CHECK(*read("-9223372036854775809").root.number() == -9223372036854775809.0);
}
