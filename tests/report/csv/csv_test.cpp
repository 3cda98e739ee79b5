#include <catch2/catch.hpp>

#include <ringfill/report/csv/csv.hpp>

using namespace ringfill;

TEST_CASE("rows are written as RFC 4180 has them") {
    CHECK(csv({{"item", "need"}, {"wire", 3.87}}) == "item,need\r\nwire,3.87\r\n");
    CHECK(csv({{"a, b", "say \"no\"", "two", ""}}) == "\"a, b\",\"say \"\"no\"\"\",two,\r\n");
    CHECK(csv({{"Büchse × 2"}}) == "Büchse × 2\r\n");
    CHECK(csv({}).empty());
}

TEST_CASE("a text that a spreadsheet would run is made harmless") {
    CHECK(csv({{"=cmd|' /C calc'!A0"}}) == "'=cmd|' /C calc'!A0\r\n");
    CHECK(csv({{"+1", "-1", "@x"}}) == "'+1,'-1,'@x\r\n");
    CHECK(csv({{"=\"a\""}}) == "\"'=\"\"a\"\"\"\r\n");
    CHECK(csv({{-1.5}}) == "-1.5\r\n"); // a number is a number
    CHECK(csv({{"a=b"}}) == "a=b\r\n");
}

TEST_CASE("tabs, line breaks and marks of direction do not get into a row") {
    CHECK(csv({{"\tx", "\r\n=x", "two\nlines", "\u202Eabc"}}) ==
          "\uFFFDx,\uFFFD\uFFFD=x,two\uFFFDlines,\uFFFDabc\r\n");
}

TEST_CASE("a number that is not finite does not get into a row") {
    CHECK_THROWS_AS(csv({{std::numeric_limits<double>::quiet_NaN()}}), std::logic_error);
}
