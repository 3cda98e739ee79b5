#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/day/longer_day.hpp>

#include "day/schedule_sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const Calendar with_break{minutes(7 * 60), minutes(600), {}, minutes(45)};

/// A bore without any rest: hand work, then heat, then boring.
BoreWork hot_bore(double before, double hot) {
    return {"left",
            {{{step(steps::check_cracks, before)}},
             {{step(steps::mount_torch, 20), step(steps::preheat, 30), step(steps::weld, hot - 30)}, true},
             {{step(steps::rough, 40)}}}};
}

JobWork job_of(BoreWork bore) {
    return {step(steps::unload, 30), {line({std::move(bore)})}, step(steps::pack, 30)};
}

bool has(const Schedule& schedule, const char* lines) {
    INFO(told(schedule));
    return told(schedule).find(lines) != std::string::npos;
}

} // namespace

// By hand: 30 + 60 + 310 of hand work end at 400, the mounting at 420. The fire takes 200 and the evening
// comes at 600: it is not lit before the morning, yet the torch is mounted in the evening.
TEST_CASE("what comes before the fire is done in the evening, the fire is lit in the morning") {
    const Schedule schedule = lay_out(job_of(hot_bore(310, 200)), ten_hours, {}, Turns::one_by_one);
    CHECK(has(schedule, "400-420 left mount torch\n"
                        "420-600 left wait for the morning\n"
                        "600-1440 left wait for the morning (night)\n"
                        "1440-1470 left preheat\n"
                        "1470-1640 left weld\n"
                        "1640-1680 left rough and semi-finish\n"));
}

// By hand: 30 + 60 + 300 + 20 + 170 = 580; roughing of 40 is cut at the evening, 20 are left for the morning.
// With 45 min late allowed all of it ends at 620. 10 min before the evening nobody begins.
TEST_CASE("a boring pass is cut by the evening and goes on in the morning, a fire is not") {
    const JobWork work = job_of(hot_bore(300, 170));
    CHECK(has(lay_out(work, ten_hours, {}, Turns::one_by_one),
              "410-440 left preheat\n440-580 left weld\n580-600 left rough and semi-finish\n"
              "600-1440 left wait for the morning (night)\n1440-1460 left rough and semi-finish\n"));
    const Calendar late{minutes(7 * 60), minutes(600), minutes(45)};
    CHECK(has(lay_out(work, late, {}, Turns::one_by_one), "580-620 left rough and semi-finish\n"));
    CHECK(has(lay_out(job_of(hot_bore(300, 180)), ten_hours, {}, Turns::one_by_one),
              "590-600 left wait for the morning\n600-1440 left wait for the morning (night)\n"
              "1440-1480 left rough and semi-finish\n"));
}

// By hand: the middle of the day is 300. Hand work from 90 to 290: the mounting (290 to 310) has it as near
// to its begin as to its end, and the break is had before it.
TEST_CASE("the break lies between two steps, where it is nearest to the middle of the day") {
    CHECK(has(lay_out(job_of(hot_bore(200, 100)), with_break, {}, Turns::one_by_one),
              "290-335 break\n335-355 left mount torch\n"));
    // from 90 to 170: the fire goes from 190 to 330, and the break comes 30 min after the middle
    CHECK(has(lay_out(job_of(hot_bore(80, 140)), with_break, {}, Turns::one_by_one),
              "190-220 left preheat\n220-330 left weld\n330-375 break\n375-415 left rough"));
    // from 90 to 220: the fire goes from 240 to 540, and the break comes an hour before the middle
    CHECK(has(lay_out(job_of(hot_bore(130, 300)), with_break, {}, Turns::one_by_one),
              "240-285 break\n285-315 left preheat\n315-585 left weld\n"));
}

TEST_CASE("there is one break a day, none where the work ends by noon, and none where the job has none") {
    BoreWork long_one = hot_bore(20, 100);
    long_one.blocks[0].steps = {step(steps::survey, 900)};
    const Schedule days = lay_out(job_of(long_one), with_break, {}, Turns::one_by_one);
    // a long step that can be cut is left for it in the middle of the day: 90 + 210, and 600 - 345 till
    // evening
    CHECK(has(days, "90-300 left survey\n300-345 break\n345-600 left survey\n"));
    CHECK(has(days, "1440-1740 left survey\n1740-1785 break\n1785-1920 left survey\n"));
    std::vector<int> had;
    for (const DayEntry& entry : days.entries)
        if (entry.step == steps::pause)
            had.push_back(day_of(entry.from));
    CHECK(had == std::vector<int>{0, 1});
    const std::string quick = told(lay_out(job_of(hot_bore(20, 60)), with_break, {}, Turns::one_by_one));
    CHECK(quick.find("break") == std::string::npos); // 30 + 60 + 20 + 20 + 60 + 40 + 20 + 30 = 280
    CHECK_FALSE(has(lay_out(job_of(hot_bore(200, 100)), ten_hours, {}, Turns::one_by_one), "break"));
}

// By hand: 480 and the break are too much for the 510 that are left of the first day. From the morning on the
// fire would last to 480, 180 after the middle of the day, and a quarter of the day is 150. Its steps end at
// 30, 220, 240 and 480: 240 lies nearest to 300.
TEST_CASE("a break falls into a fire only where that goes on most of the day, between two of its steps") {
    BoreWork bore = hot_bore(0, 30);
    bore.blocks[1].steps = {step(steps::preheat, 30), step(steps::weld, 190), step(steps::wait_too_hot, 20),
                            step(steps::weld, 240)};
    const Schedule schedule = lay_out(job_of(bore), with_break, {}, Turns::one_by_one);
    CHECK(has(schedule, "1440-1470 left preheat\n1470-1660 left weld\n1660-1680 left wait: too hot after\n"
                        "1680-1725 left break\n1725-1965 left weld\n"));
    REQUIRE(schedule.breaks_in_fire.size() == 1);
    CHECK(schedule.breaks_in_fire.front().day == 1);
    CHECK(schedule.breaks_in_fire.front().bore == "left");
    CHECK(lay_out(job_of(hot_bore(130, 300)), with_break, {}, Turns::one_by_one).breaks_in_fire.empty());
}

// By hand: the bore cools from 180 to 330, the break of 45 min lies round the middle of the day, 300.
TEST_CASE("a break is had in a wait on site that lies there, and the work is no later for it") {
    const Schedule schedule = lay_out(job_of(bore("left", 0, 120)), with_break, {}, Turns::one_by_one);
    CHECK(has(schedule, "220-278 left cools for roughing\n278-322 break\n322-340 left cools for roughing\n"));
}

// By hand: the fire of 200 would go from 420 to 620. 60 min more on the first day hold it, and the boring
// (40 + 20 + 30) comes after it, late: all ends on the first day instead of the second.
TEST_CASE("an hour more in the evening that ends the work a day earlier is found") {
    const JobWork work = job_of(hot_bore(310, 200));
    const Schedule schedule = lay_out(work, ten_hours, {}, Turns::one_by_one);
    const auto found = overtime(work, ten_hours, {}, schedule.ends);
    REQUIRE(found);
    CHECK(found->day.day == 0);
    CHECK(found->day.by.value() / 60 == 60);
    CHECK(found->ends.value() / 60 == 420 + 200 + 40 + 20 + 30);
}

// By hand: 30 + 60 + 60 + 20 of hand work and 30 of preheat end at 200; of 700 in stitches 400 are done up to
// the evening, 300 in the morning. The arc of 70 goes with them: 40 and 30.
TEST_CASE("stitches on cold iron are left over night, with their share of the arc") {
    BoreWork iron = hot_bore(60, 30);
    iron.blocks[1].steps.back() = {steps::weld_in_stitches, minutes(700), {}, minutes(70)};
    const Schedule schedule = lay_out(job_of(std::move(iron)), ten_hours, {}, Turns::one_by_one);
    CHECK(has(schedule, "170-200 left preheat\n200-600 left weld in stitches\n"
                        "600-1440 left wait for the morning (night)\n1440-1740 left weld in stitches\n"));
    std::vector<Time> arcs;
    for (const DayEntry& entry : schedule.entries)
        if (entry.step == steps::weld_in_stitches)
            arcs.push_back(entry.arc_time);
    REQUIRE(arcs.size() == 2);
    CHECK(std::abs(arcs[0].value() - 40 * 60) < 1e-6);
    CHECK(std::abs(arcs[1].value() - 30 * 60) < 1e-6);
}
