#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <random>

#include <ringfill/heat/dwells.hpp>

using namespace ringfill;
using Catch::WithinAbs;

namespace {

using Pauses = std::vector<std::optional<Time>>;

Pauses pauses(const std::vector<double>& seconds) {
    Pauses made;
    for (const double one : seconds)
        made.push_back(one < 0 ? std::nullopt : std::optional(in_si<Time>(one)));
    return made;
}

const Time step_over = in_si<Time>(12);

/// What is told more than is needed.
double cost(const Pauses& own, const std::vector<DwellStretch>& stretches) {
    double sum = 0;
    for (const DwellStretch& stretch : stretches)
        for (std::size_t i = stretch.first; i <= stretch.last; ++i)
            sum += own[i] ? (stretch.told - *own[i]).value() : 0;
    return sum;
}

/// The least cost of one to three runs, by trying every cut.
double least_cost(const Pauses& own) {
    const auto of_run = [&](std::size_t from, std::size_t to) {
        double longest = 12;
        double sum = 0;
        int count = 0;
        for (std::size_t i = from; i < to; ++i)
            if (own[i]) {
                longest = std::max(longest, own[i]->value());
                sum += own[i]->value();
                ++count;
            }
        const double told = longest > 12 ? 5 * std::ceil(longest / 5 - 1e-6) : 12;
        return count * told - sum;
    };
    double least = of_run(0, own.size());
    for (std::size_t one = 1; one <= own.size(); ++one)
        for (std::size_t two = one; two <= own.size(); ++two)
            least = std::min(least, of_run(0, one) + of_run(one, two) + of_run(two, own.size()));
    return least;
}

} // namespace

TEST_CASE("a dwell is the longest pause rounded up to 5 s, or the step-over where nothing waits") {
    CHECK(told_dwell(in_si<Time>(12), step_over) == step_over);
    CHECK(told_dwell(in_si<Time>(12.5), step_over).value() == 15);
    CHECK(told_dwell(in_si<Time>(30), step_over).value() == 30);
    CHECK(told_dwell(in_si<Time>(30.1), step_over).value() == 35);
    CHECK(dwell_stretches({}, step_over).empty());
    const auto none = dwell_stretches(pauses({12, 12, 12}), step_over);
    REQUIRE(none.size() == 1);
    CHECK(none[0].told == step_over);
}

// By hand: 20 20 | 50 50 | 80 tells nothing in excess; a fourth level makes two of them share one.
TEST_CASE("pauses that rise in steps are cut at the steps") {
    const auto three = dwell_stretches(pauses({20, 20, 50, 50, 80}), step_over);
    REQUIRE(three.size() == 3);
    CHECK(three[0].last == 1);
    CHECK(three[1].last == 3);
    CHECK(three[2].told.value() == 80);
    const auto four = dwell_stretches(pauses({20, 20, 50, 50, 80, 85, 85}), step_over);
    REQUIRE(four.size() == 3);
    CHECK(four[2].first == 4);
    CHECK(four[2].told.value() == 85);
    const auto apart = dwell_stretches(pauses({20, -1, 20}), step_over);
    REQUIRE(apart.size() == 1);
    CHECK(apart[0].told.value() == 20);
    CHECK(dwell_stretches(pauses({40, 40}), step_over).size() == 1);
}

TEST_CASE("no other cut into three tells less") {
    std::mt19937_64 random(5);
    for (int i = 0; i < 300; ++i) {
        std::vector<double> seconds;
        for (std::size_t n = 1 + random() % 14; n > 0; --n)
            seconds.push_back(random() % 7 == 0 ? -1 : 12 + static_cast<double>(random() % 800) / 10);
        const Pauses own = pauses(seconds);
        const auto stretches = dwell_stretches(own, step_over);
        REQUIRE(!stretches.empty());
        CHECK(stretches.size() <= 3);
        CHECK(stretches.front().first == 0);
        CHECK(stretches.back().last == own.size() - 1);
        for (std::size_t k = 1; k < stretches.size(); ++k)
            CHECK(stretches[k].first == stretches[k - 1].last + 1);
        CHECK_THAT(cost(own, stretches), WithinAbs(least_cost(own), 1e-6));
    }
}
