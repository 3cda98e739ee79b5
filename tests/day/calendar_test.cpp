#include <catch2/catch.hpp>

#include <ringfill/day/calendar.hpp>

using namespace ringfill;

namespace {

Time hours(double h) {
    return in_si<Time>(h * 3600);
}

const Calendar ten_hours{hours(7), hours(10)};

double begins(double earliest, double length) {
    return begin_at(ten_hours, hours(earliest), hours(length)).value() / 3600;
}

} // namespace

TEST_CASE("work begins at once when it ends within the day, else in the morning") {
    CHECK(begins(0, 3) == 0);
    CHECK(begins(7, 3) == 7);
    CHECK(begins(7.001, 3) == 24);
    CHECK(begins(12, 0.5) == 24); // in the night
    CHECK(begins(24, 3) == 24);
    CHECK(begins(33, 1) == 33);
    CHECK(begins(33.5, 1) == 48);
}

TEST_CASE("work longer than a day begins in a morning and runs over") {
    CHECK(begins(0, 14) == 0);
    CHECK(begins(1, 14) == 24);
}

TEST_CASE("days are counted from the first morning") {
    CHECK(day_of(hours(0)) == 0);
    CHECK(day_of(hours(23.9)) == 0);
    CHECK(day_of(hours(24)) == 1);
    CHECK(working_end(ten_hours, hours(30)).value() == 34 * 3600);
    CHECK(next_morning(hours(30)).value() == 48 * 3600);
}
