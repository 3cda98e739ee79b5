#include <catch2/catch.hpp>

#include <stdexcept>

#include <ringfill/quote/money.hpp>
#include <ringfill/quote/quote_line.hpp>

#include "fault_figures.hpp"

using namespace ringfill;

namespace {

Currency with_exponent(int exponent) {
    return {"XXX", {exponent, "ISO4217"}};
}

/// A line of so many thousandths at a price, in a currency; its amount as text.
std::string amount(Thousandths quantity, const char* price, int exponent) {
    QuoteLine line;
    line.quantity = quantity;
    std::vector<Fault> faults;
    line = priced(line, {"prices.x", decimal_of(price)}, with_exponent(exponent), faults);
    CHECK(faults.empty());
    return line.amount ? money_text(*line.amount, exponent) : "missing";
}

} // namespace

// By hand: what is just half goes to the even one, and nothing else does.
TEST_CASE("halves go to the even amount") {
    CHECK(half_even(1, 1, 2) == 0);
    CHECK(half_even(3, 1, 2) == 2);
    CHECK(half_even(5, 1, 2) == 2);
    CHECK(half_even(7, 1, 2) == 4);
    CHECK(half_even(0, 5, 2) == 0);
    CHECK(half_even(49, 1, 100) == 0);
    CHECK(half_even(50, 1, 100) == 0);
    CHECK(half_even(51, 1, 100) == 1);
    CHECK(half_even(149, 1, 100) == 1);
    CHECK(half_even(150, 1, 100) == 2);
    CHECK(half_even(250, 1, 100) == 2);
    CHECK(half_even(251, 1, 100) == 3);
    CHECK(half_even(1, 1, 3) == 0); // a divisor that has no half
    CHECK(half_even(2, 1, 3) == 1);
    CHECK(half_even(7, 10, 7) == 10);
}

// By hand, the exponents of ISO 4217: a line of 0.5 units at a price whose half lies between two amounts.
TEST_CASE("a line is rounded once, in the smallest unit of a currency of every exponent") {
    CHECK(amount(500, "5", 0) == "2");
    CHECK(amount(500, "7", 0) == "4");
    CHECK(amount(500, "5.01", 0) == "3");
    CHECK(amount(500, "0.05", 2) == "0.02");
    CHECK(amount(500, "0.07", 2) == "0.04");
    CHECK(amount(500, "0.0501", 2) == "0.03");
    CHECK(amount(500, "0.005", 3) == "0.002");
    CHECK(amount(500, "0.007", 3) == "0.004");
    CHECK(amount(500, "0.00501", 3) == "0.003");
    CHECK(amount(3'902, "4.2", 2) == "16.39"); // 16.3884
    CHECK(amount(1'005, "1", 2) == "1.00");    // 1.005, which binary floating point cannot hold
    CHECK(amount(1'015, "1", 2) == "1.02");
    CHECK(amount(1'000, "1234567", 0) == "1234567");
}

TEST_CASE("a price with more than two decimals over its currency is noted, with its place") {
    for (const auto& [price, exponent, told] :
         {std::tuple{"1.234", 0, "prices.x: 1.234 2 0"}, std::tuple{"1.23456", 2, "prices.x: 1.23456 4 2"},
          std::tuple{"1.234567", 3, "prices.x: 1.234567 5 3"}}) {
        QuoteLine line;
        line.quantity = 1'000;
        std::vector<Fault> faults;
        line = priced(line, {"prices.x", decimal_of(price)}, with_exponent(exponent), faults);
        REQUIRE(faults.size() == 1);
        CHECK(testing::in_figures(faults.front()) == told);
        CHECK(line.missing == "price");
        CHECK_FALSE(line.amount);
    }
}

TEST_CASE("an amount that is too large to be exact is refused, and told so") {
    CHECK(half_even(9'000'000'000'000'000, 1, 100'000) == 90'000'000'000);
    CHECK_FALSE(half_even(9'000'000'000'000'001, 1, 100'000));
    CHECK_FALSE(half_even(4'000'000'000, 4'000'000'000, 100'000));
    CHECK(half_even(999'999'999'999'999, 1, 1) == most_minor);
    CHECK_FALSE(half_even(1'000'000'000'000'000, 1, 1));
    CHECK(sum_of({most_minor - 1, 1}) == most_minor);
    CHECK_FALSE(sum_of({most_minor, 1}));
    CHECK(sum_of({}) == 0);
    QuoteLine line;
    line.quantity = 9'999'999'999;
    std::vector<Fault> faults;
    line = priced(line, {"prices.x", decimal_of("99999999")}, with_exponent(2), faults);
    REQUIRE(faults.size() == 1);
    CHECK(testing::in_figures(faults.front()) == "prices.x:");
    CHECK(line.missing == "amount");
}

TEST_CASE("negative money is a fault of the program") {
    CHECK_THROWS_AS(half_even(-1, 1, 1), std::logic_error);
    CHECK_THROWS_AS(half_even(1, -1, 1), std::logic_error);
    CHECK_THROWS_AS(half_even(1, 1, 0), std::logic_error);
    CHECK_THROWS_AS(sum_of({1, -1}), std::logic_error);
    CHECK_THROWS_AS(thousandths(-0.001), std::logic_error);
    CHECK_THROWS_AS(thousandths(std::nan("")), std::logic_error);
}

TEST_CASE("money is told with the decimals of its currency") {
    CHECK(money_text(123'450, 2) == "1234.50");
    CHECK(money_text(5, 2) == "0.05");
    CHECK(money_text(1'235, 0) == "1235");
    CHECK(money_text(1'235, 3) == "1.235");
    CHECK(money_text(0, 3) == "0.000");
}

TEST_CASE("a price that is missing is said, and never counts as nothing") {
    QuoteLine line = line_of("watch", 2, "h");
    std::vector<Fault> faults;
    line = priced(line, {"prices.watch_hour", std::nullopt}, with_exponent(2), faults);
    CHECK_FALSE(line.amount);
    CHECK(line.missing == "price: write prices.watch_hour");
    CHECK(faults.empty());
    QuoteLine free = line_of("watch", 2, "h");
    free = priced(free, {"prices.watch_hour", Decimal{}}, with_exponent(2), faults);
    CHECK(free.amount == 0); // who writes 0 means it
    CHECK(free.missing.empty());
}
