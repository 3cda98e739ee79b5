#include <catch2/catch.hpp>

#include <ringfill/job/own_fields.hpp>

using namespace ringfill;

TEST_CASE("a time of day is read as people write it, and nothing else is one") {
    const auto minutes = [](const char* text) {
        const auto time = clock_time(text);
        return time ? time->value() / 60 : -1;
    };
    CHECK(minutes("07:00") == 420);
    CHECK(minutes("7:30") == 450);
    CHECK(minutes("00:00") == 0);
    CHECK(minutes("23:59") == 1439);
    for (const char* wrong :
         {"", "7", "7:5", "24:00", "12:60", "7.30", "-1:00", "07:000", "a7:00", ":30", "7:", "007:00"}) {
        INFO(wrong);
        CHECK(minutes(wrong) == -1);
    }
}
