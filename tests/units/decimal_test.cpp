#include <catch2/catch.hpp>

#include <ringfill/units/decimal.hpp>

using namespace ringfill;

TEST_CASE("a decimal is read as written, without floating point between") {
    CHECK(decimal_of("4.2") == Decimal{42, 1});
    CHECK(decimal_of("4.20") == Decimal{42, 1});
    CHECK(decimal_of("0.1") == Decimal{1, 1});
    CHECK(decimal_of("85") == Decimal{85, 0});
    CHECK(decimal_of("8500") == Decimal{8500, 0});
    CHECK(decimal_of("0") == Decimal{0, 0});
    CHECK(decimal_of("0.000") == Decimal{0, 0});
    CHECK(decimal_of("1e3") == Decimal{1000, 0});
    CHECK(decimal_of("1.5E+2") == Decimal{150, 0});
    CHECK(decimal_of("1.25e1") == Decimal{125, 1});
    CHECK(decimal_of("12e-3") == Decimal{12, 3});
    CHECK(decimal_of("120e-3") == Decimal{12, 2});
    CHECK(decimal_of("999999999999999") == Decimal{999'999'999'999'999, 0});
    CHECK(decimal_of("0.000000000000001") == Decimal{1, 15});
}

TEST_CASE("what is no decimal, negative, or too long for 15 digits gives nothing") {
    for (const char* text :
         {"", "-1", "+1", ".5", "1.", "1,5", "0x10", "1e", "1e1.5", "1 ", "nan", "inf", "1000000000000000",
          "1.000000000000001", "0.0000000000000001", "1e16", "1e-16", "1e99999999999", "12a"}) {
        CAPTURE(text);
        CHECK_FALSE(decimal_of(text));
    }
}

TEST_CASE("parts of a decimal are whole, and nothing when it has more decimals") {
    CHECK(in_parts({42, 1}, 4) == 42'000);
    CHECK(in_parts({42, 1}, 1) == 42);
    CHECK_FALSE(in_parts({42, 1}, 0));
    CHECK(in_parts({0, 0}, 15) == 0);
    CHECK(in_parts({9'999, 0}, 11) == 999'900'000'000'000);
    CHECK_FALSE(in_parts({10'000, 0}, 11));
}

TEST_CASE("a decimal is told with the decimals it has, and at least some") {
    CHECK(decimal_text({42, 1}) == "4.2");
    CHECK(decimal_text({42, 1}, 2) == "4.20");
    CHECK(decimal_text({3125, 4}, 2) == "0.3125");
    CHECK(decimal_text({5, 3}) == "0.005");
    CHECK(decimal_text({85, 0}) == "85");
    CHECK(decimal_text({85, 0}, 3) == "85.000");
    CHECK(as_double({42, 1}) == 4.2);
    CHECK(as_double({3125, 4}) == 0.3125);
}
