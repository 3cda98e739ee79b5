#include <catch2/catch.hpp>

#include <limits>

#include <ringfill/document/in_span.hpp>

using namespace ringfill;

TEST_CASE("the ends of a span belong to it unless its low end is open") {
    CHECK(in_span(0, {0, 10}));
    CHECK(in_span(10, {0, 10}));
    CHECK_FALSE(in_span(0, {0, 10, true}));
    CHECK(in_span(1e-300, {0, 10, true}));
    CHECK_FALSE(in_span(-1e-300, {0, 10}));
    CHECK_FALSE(in_span(10.000001, {0, 10}));
}

TEST_CASE("nothing but finite numbers is in a span") {
    CHECK_FALSE(in_span(std::numeric_limits<double>::quiet_NaN(), {0, 10}));
    CHECK_FALSE(in_span(std::numeric_limits<double>::quiet_NaN(), {0, 10, true}));
    CHECK_FALSE(in_span(std::numeric_limits<double>::infinity(), {0, 1e308}));
}

TEST_CASE("a span is told in its unit") {
    CHECK(span_in_words({0, 10, true}, "mm", 1e-3) == "over 0 mm and at most 10000 mm");
    CHECK(span_in_words({0.5, 2}, "") == "from 0.5 to 2");
    CHECK(span_in_words({0, 1}, "%", 0.01) == "from 0 % to 100 %");
}
