#include <catch2/catch.hpp>

#include "day/schedule_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("one bore after the other: every minute is told, the rest is waited for") {
    CHECK(told(day_of_line({bore("left", 15, 60)}, Turns::one_by_one)) ==
          "0-30 unload and make the place safe\n"
          "30-90 set up and align the bar\n"
          "90-100 left survey\n"
          "100-110 left plug holes\n"
          "110-130 left skim\n"
          "130-160 left preheat\n"
          "160-190 left weld\n"
          "190-205 left wait: too hot after\n"
          "205-235 left weld\n"
          "235-295 left cools for roughing\n"
          "295-335 left rough and semi-finish\n"
          "335-355 take the bar off\n"
          "355-385 pack and hand over\n");
}

TEST_CASE("a wait in the weld longer than a change over is filled with hand work on the other bore") {
    const std::string text =
        told(day_of_line({bore("left", 45, 60), bore("right", 45, 60)}, Turns::alternating));
    INFO(text);
    CHECK(
        text.find(
            "190-200 right change over\n200-210 right survey\n210-220 right plug holes\n220-230 left change "
            "over\n230-235 left wait: too hot after\n235-265 left weld\n") != std::string::npos);
}

TEST_CASE("a wait that is no longer than a change over is waited for") {
    const std::string text =
        told(day_of_line({bore("left", 20, 60), bore("right", 20, 60)}, Turns::alternating));
    CHECK(text.find("left wait: too hot after\n") != std::string::npos);
    CHECK(text.find("190-210 left wait: too hot after") != std::string::npos);
}

TEST_CASE("while one bore cools the other is welded, and the line is done sooner") {
    const std::vector<BoreWork> two{bore("left", 15, 120), bore("right", 15, 120)};
    const auto laid = [&](Turns turns) { return lay_out(work_on(two), round_the_clock, minutes(20), turns); };
    const Schedule alternating = laid(Turns::alternating);
    const Schedule in_turn = laid(Turns::one_by_one);
    INFO(told(alternating));
    // by hand: the second bore is skimmed and welded while the first cools, the first is bored while the
    // second does
    CHECK(alternating.ends.value() / 60 ==
          30 + 60 + 145 + 10 + 145 + 10 + 40 + (120 - 50) + 10 + 40 + 20 + 30);
    CHECK(in_turn.ends.value() / 60 == 30 + 60 + 2 * (40 + 105 + 120 + 40) + 10 + 20 + 30);
}

TEST_CASE("what does not end within the day goes on in the morning, the night is told and cools") {
    const Schedule schedule = day_of_line({bore("left", 15, 400)}, Turns::one_by_one);
    const std::string text = told(schedule);
    INFO(text);
    CHECK(text.find("235-600 left cools for roughing\n600-1440 left cools for roughing (night)\n1440-1480 "
                    "left rough and semi-finish\n") != std::string::npos);
    CHECK(schedule.long_bore == LongBore::none);
}

// By hand: the weld ends at 235 min, the bore needs 400 min and is ready after the evening at 600, so nobody
// stays for the 365 min that are left of the day. Hands: 235 - 15 on the first day, 40 + 20 + 30 on the
// second; the 15 min in the weld are waited for on site.
TEST_CASE("a wait until the morning is idle, neither work nor waiting on site") {
    const Schedule schedule = day_of_line({bore("left", 15, 400)}, Turns::one_by_one);
    const auto minutes_of = [&](bool (*wanted)(Phase)) {
        double sum = 0;
        for (const Time& stretch : stretches_of(schedule, wanted))
            sum += stretch.value() / 60;
        return sum;
    };
    CHECK(minutes_of(is_work) == 310);
    CHECK(minutes_of([](Phase phase) { return phase == Phase::waiting; }) == 15);
    CHECK(minutes_of([](Phase phase) { return phase == Phase::idle; }) == 365);
}

TEST_CASE("where work goes round the clock a wait over midnight is waited for on site") {
    const Schedule schedule =
        lay_out(work_on({bore("left", 15, 1400)}), round_the_clock, {}, Turns::one_by_one);
    for (const DayEntry& entry : schedule.entries)
        CHECK((entry.phase != Phase::idle && !entry.night));
}

TEST_CASE("a weld longer than a day begins in a morning and says that it runs over") {
    BoreWork long_one = bore("left", 600, 60);
    const Schedule schedule = day_of_line({long_one}, Turns::one_by_one);
    CHECK(schedule.long_bore == LongBore::without_preheat);
    long_one.preheated = true;
    CHECK(day_of_line({long_one}, Turns::one_by_one).long_bore == LongBore::with_preheat);
    CHECK(told(schedule).find("1440-1470 left preheat") != std::string::npos);
}
