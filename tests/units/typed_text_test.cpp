#include <catch2/catch.hpp>

#include <ringfill/units/typed_text.hpp>

using namespace ringfill;

TEST_CASE("every dash and minus becomes the plain one") {
    for (const std::string_view dash :
         {"-", "\u2212", "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2015", "\uFF0D"}) {
        INFO(dash);
        CHECK(plain_signs(std::string(dash) + "3" + std::string(dash) + "9/16 in") == "-3-9/16 in");
    }
}

TEST_CASE("every blank becomes the plain one, and outer ones go") {
    for (const std::string_view blank :
         {" ", "\t", "\u00A0", "\u2002", "\u2003", "\u2004", "\u2005", "\u2006", "\u2007", "\u2008", "\u2009",
          "\u200A", "\u202F", "\u3000"}) {
        INFO(blank);
        const std::string b(blank);
        CHECK(plain_signs(b + "90.4" + b + "mm" + b + b) == "90.4 mm");
    }
    CHECK(plain_signs("").empty());
    CHECK(plain_signs(" \t\u00A0").empty());
}

TEST_CASE("fraction signs become plain fractions") {
    CHECK(plain_signs("3½ in") == "3 1/2 in");
    CHECK(plain_signs("½ in") == "1/2 in");
    CHECK(plain_signs("¼¾⅛⅜⅝⅞") == "1/4 3/4 1/8 3/8 5/8 7/8");
    CHECK(plain_signs("9\u204416") == "9/16");
    CHECK(plain_signs("9\u221516") == "9/16");
}

TEST_CASE("other signs and broken bytes stay") {
    CHECK(plain_signs("40 °F ″ \xFF\xE2") == "40 °F ″ \xFF\xE2");
}
