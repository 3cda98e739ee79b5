#include <catch2/catch.hpp>

#include <cmath>
#include <stdexcept>

#include "formula.hpp"

using ringfill::testing::evaluate;

TEST_CASE("the judge of formulas computes as arithmetic does") {
    CHECK(evaluate("2 + 3*4", {}) == 14);
    CHECK(evaluate("2*3^2", {}) == 18);
    CHECK(evaluate("2^3^2", {}) == 512);
    CHECK(evaluate("(2 + 3)*4 - 6/3 - 1", {}) == 17);
    CHECK(evaluate("1.5e1/3", {}) == 5);
    CHECK(evaluate("sqrt(a^2 + b_1^2)", {{"a", {3}}, {"b_1", {4}}}) == 5);
    CHECK(evaluate("ceil(7/2) + floor(7/2) + mod(7, 4) + max(1, 2) + min(1, 2)", {}) == 13);
    CHECK(evaluate("sum(n*m) + mean(m)", {{"n", {1, 2}}, {"m", {10, 20}}}) == 65);
    CHECK(evaluate("highest(n) - lowest(n)", {{"n", {3, 8, 5}}}) == 5);
}

// Judged by other ways to the same: the series of e, a power undone, and tanh by exponentials.
TEST_CASE("the judge of formulas knows exp, log10 and tanh") {
    CHECK(evaluate("exp(0) + log10(1000) + tanh(0)", {}) == 4);
    double series = 0;
    for (double n = 1, term = 1; n < 25; term /= n, ++n)
        series += term;
    CHECK(std::fabs(evaluate("exp(1)", {}) - series) < 1e-14);
    CHECK(std::fabs(evaluate("10^log10(x) - x", {{"x", {2.5}}})) < 1e-14);
    CHECK(std::fabs(evaluate("tanh(x) - (exp(2*x) - 1)/(exp(2*x) + 1)", {{"x", {0.3}}})) < 1e-15);
    CHECK(std::fabs(evaluate("tanh(x)", {{"x", {0.3}}})) > 0.29); // 0.3 less about 0.3^3/3
}

TEST_CASE("the judge of formulas refuses what is not one") {
    CHECK_THROWS_AS(evaluate("a", {{"a", {1}}}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("measured", {{"measured", {1}}}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("3", {}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("a + b", {{"a", {1}}}), std::out_of_range);
    CHECK_THROWS_AS(evaluate("2 +", {}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("2 3", {}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("2*m", {{"m", {1, 2}}}), std::runtime_error);
    CHECK_THROWS_AS(evaluate("magic(2)", {}), std::runtime_error);
}
