#include <catch2/catch.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <random>
#include <stdexcept>

#include <boost/json/parse.hpp>

#include <ringfill/document/parse.hpp>
#include <ringfill/document/write.hpp>

using namespace ringfill;
using Catch::WithinRel;

TEST_CASE("numbers are written as people write them") {
    CHECK(write_number(0) == "0");
    CHECK(write_number(-0.0) == "0");
    CHECK(write_number(0.1) == "0.1");
    CHECK(write_number(100) == "100");
    CHECK(write_number(-90.4) == "-90.4");
    CHECK(write_number(1.0 / 3) == "0.333333333333333");
    CHECK(write_number(2e6 / 3) == "666666.666666667");
    CHECK(write_number(0.1 + 0.2) == "0.3");
    CHECK(write_number(0.00001) == "0.00001");
    CHECK(write_number(123456789012345) == "123456789012345");
    CHECK(write_number(99999999999999.97) == "100000000000000");
    CHECK(write_number(999999.9999999996) == "1000000");
    CHECK(write_number(1e-6) == "1e-06");
    CHECK(write_number(1e300) == "1e+300");
    CHECK(std::stod(write_number(std::numeric_limits<double>::max())) == std::numeric_limits<double>::max());
    CHECK(write_number(std::numeric_limits<double>::denorm_min()) == "5e-324");
}

TEST_CASE("a number written and read back keeps fifteen digits") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> digits(-1, 1);
    std::uniform_int_distribution<int> size(-300, 300);
    for (int i = 0; i < 5'000; ++i) {
        const double number = digits(random) * std::pow(10.0, i % 2 ? size(random) : size(random) / 30);
        const std::string text = write_number(number);
        INFO(text);
        CHECK_THAT(std::stod(text),
                   WithinRel(number, 5.001e-15)); // half of the fifteenth digit of 1.00000000000000
        CHECK_THAT(*parse("n", text, Origin::job).root.number(), WithinRel(number, 6e-15));
    }
}

TEST_CASE("a number has the fifteen digits that the standard library gives it") {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> digits(1, 10);
    std::uniform_int_distribution<int> size(-7, 15);
    const auto check = [](double number) {
        std::array<char, 32> signs = {};
        const char* const end = std::to_chars(signs.data(), signs.data() + signs.size(), number,
                                              std::chars_format::scientific, 14)
                                    .ptr;
        const std::string written = write_number(number);
        double by_library = 0;
        double ours = 0;
        std::from_chars(signs.data(), end, by_library);
        std::from_chars(written.data(), written.data() + written.size(), ours);
        INFO(written << " of "
                     << std::string_view(signs.data(), static_cast<std::size_t>(end - signs.data())));
        REQUIRE(ours == by_library);
    };
    for (int i = 0; i < 100'000; ++i)
        check(digits(random) * std::pow(10.0, size(random)));
    for (int exponent = -7; exponent <= 16; ++exponent) // nearest to a power of ten and to half a digit
        for (const double near : {1.0, 9.999999999999995, 1.000000000000005, 2.5, 1.234567890123455,
                                  9.999999999999994, 1.0000000000000002, 4.503599627370497}) {
            const double number = near * std::pow(10.0, exponent);
            for (const double one : {std::nextafter(number, 0.0), number, std::nextafter(number, 1e300)})
                check(one);
        }
    for (int i = 0; i < 50'000; ++i) // sixteen digits that end in a five, where a double may hold them
        check((std::floor(digits(random) * 1e13) + 0.5) / std::pow(10.0, i % 5));
}

TEST_CASE("a number that is not finite never reaches a result") {
    for (const double number :
         {std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
          std::numeric_limits<double>::quiet_NaN()}) {
        CHECK_THROWS_AS(write_number(number), std::logic_error);
        CHECK_THROWS_AS(write_json(Value(Value::List{Value(number)})), std::logic_error);
    }
}

TEST_CASE("texts are written so that they read back the same") {
    const std::string all = std::string("\"\\/\b\f\n\r\t\x01\x1F\x7F½″\U0001F527") + '\0' + "end";
    CHECK(write_json(Value(all)) ==
          "\"\\\"\\\\/\\u0008\\u000c\\n\\u000d\\t\\u0001\\u001f\\u007f½″\U0001F527\\u0000end\"\n");
    CHECK(*parse("t", write_json(Value(all)), Origin::job).root.text() == all);
}

TEST_CASE("each character is written so wherever it stands in a text") {
    const std::string around = "some nineteen bytes";
    for (std::uint32_t code = 0; code < 0x100; ++code)
        for (std::size_t at = 0; at <= around.size(); ++at) {
            const std::string sign = code < 0x80 ? std::string(1, static_cast<char>(code))
                                                 : std::string{static_cast<char>(0xC0U | (code >> 6U)),
                                                               static_cast<char>(0x80U | (code & 0x3FU))};
            const std::string text = around.substr(0, at) + sign + around.substr(at);
            const std::string written = write_json_line(Value(text));
            INFO(code << " at " << at);
            REQUIRE(boost::json::parse(written.substr(0, written.size() - 1)).as_string() == text);
            const bool bare = written == '"' + text + "\"\n";
            REQUIRE(bare == (code >= 0xA0 || (code >= 0x20 && code < 0x7F && code != '"' && code != '\\')));
        }
}

// RFC 8259, section 7: a character past U+FFFF is escaped as its two halves of UTF-16. By hand for U+E0041,
// an invisible one: E0041 less 10000 is D0041, whose upper ten bits are 340 and whose lower ten are 041.
TEST_CASE("a character that is not seen is escaped, one past four hexadecimal digits in two halves") {
    CHECK(write_json(Value("a\u202Eb")) == "\"a\\u202eb\"\n");
    CHECK(write_json(Value("a\U000E0041b")) == "\"a\\udb40\\udc41b\"\n");
    CHECK(*parse("t", write_json(Value("a\U000E0041b")), Origin::job).root.text() == "a\U000E0041b");
}

TEST_CASE("the layout is two blanks of indent, members in order, plain lists on one line") {
    const Value document(
        Value::Object{{"b", Value(1.0), 0},
                      {"a", Value(Value::List{Value(1.0), Value(true), Value(), Value("x")}), 0},
                      {"o",
                       Value(Value::Object{
                           {"in\"ner", Value(Value::List{Value(Value::List{}), Value(Value::Object{})}), 0}}),
                       0}});
    CHECK(write_json(document) == "{\n"
                                  "  \"b\": 1,\n"
                                  "  \"a\": [1, true, null, \"x\"],\n"
                                  "  \"o\": {\n"
                                  "    \"in\\\"ner\": [\n"
                                  "      [],\n"
                                  "      {}\n"
                                  "    ]\n"
                                  "  }\n"
                                  "}\n");
    CHECK(write_json(parse("again", write_json(document), Origin::job).root) == write_json(document));
}
