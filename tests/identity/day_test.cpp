#include <catch2/catch.hpp>

#include <map>
#include <random>

#include <ringfill/day/schedule.hpp>

using namespace ringfill;

namespace {

struct RandomDay {
    std::vector<LineWork> lines;
    Calendar calendar;
    Time change_over;
};

RandomDay random_day(std::mt19937_64& random) {
    const auto minutes = [&](int low, int high) {
        return in_si<Time>(60.0 * std::uniform_int_distribution<int>(low, high)(random));
    };
    const auto up_to = [&](int n) { return std::uniform_int_distribution<int>(1, n)(random); };
    RandomDay day{{}, {minutes(300, 600), minutes(240, 900)}, minutes(0, 40)};
    for (int l = up_to(3); l > 0; --l) {
        LineWork line{std::to_string(l),
                      {{{steps::set_up_bar, minutes(10, 90)}}},
                      {},
                      {steps::take_off_bar, minutes(5, 30)}};
        for (int b = up_to(4); b > 0; --b) {
            BoreWork bore{std::to_string(l) + "." + std::to_string(b), {}};
            for (int k = up_to(4); k > 0; --k) {
                WorkBlock block;
                block.hot = up_to(2) == 1;
                for (int s = up_to(5); s > 0; --s) {
                    const Time length = minutes(1, 120);
                    const bool waits = block.hot && up_to(3) == 1;
                    const Step work = up_to(2) == 1 ? steps::skim : steps::check_cracks;
                    block.steps.push_back({waits ? steps::wait_too_hot : work, length});
                }
                if (up_to(2) == 1) {
                    block.rest = minutes(1, 600);
                    block.resting = steps::cool_to_rough;
                }
                bore.blocks.push_back(std::move(block));
            }
            line.bores.push_back(std::move(bore));
        }
        day.lines.push_back(std::move(line));
    }
    return day;
}

Schedule laid_out(const RandomDay& day, Turns turns) {
    return lay_out({{steps::unload, in_si<Time>(1800)}, day.lines, {steps::pack, in_si<Time>(1800)}},
                   day.calendar, day.change_over, turns);
}

/// Work with hands on each bore, changes left out [s].
std::map<std::string, double> work_of(const Schedule& schedule) {
    std::map<std::string, double> work;
    for (const DayEntry& entry : schedule.entries)
        if (!entry.step.waits() && entry.step != steps::change_over)
            work[entry.bore] += (entry.to - entry.from).value();
    return work;
}

} // namespace

TEST_CASE("every minute of the day belongs to one step, nothing is lost, and turns never cost time") {
    std::mt19937_64 random(700);
    int sooner = 0;
    for (int i = 0; i < 5'000; ++i) {
        const RandomDay day = random_day(random);
        const Schedule in_turn = laid_out(day, Turns::one_by_one);
        const Schedule alternating = laid_out(day, Turns::alternating);
        INFO("day " << i);
        for (const Schedule* schedule : {&in_turn, &alternating}) {
            Time at = {};
            for (const DayEntry& entry : schedule->entries) {
                REQUIRE(entry.from == at);
                REQUIRE(entry.to > entry.from);
                at = entry.to;
            }
            REQUIRE(at == schedule->ends);
        }
        REQUIRE(alternating.ends <= in_turn.ends);
        REQUIRE(work_of(alternating).size() == work_of(in_turn).size());
        for (const auto& [bore, seconds] : work_of(in_turn))
            REQUIRE(std::abs(work_of(alternating)[bore] - seconds) < 1e-6);
        sooner += alternating.ends < in_turn.ends ? 1 : 0;
    }
    CHECK(sooner > 500);
}
