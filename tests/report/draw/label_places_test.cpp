#include <catch2/catch.hpp>

#include <cmath>
#include <random>

#include "report/draw/drawing_parts.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const LabelColumn column{50, 80, 0, 60};

bool leaders_cross(const PlacedLabel& a, const PlacedLabel& b) {
    const auto side = [](PaperPoint p, PaperPoint q, PaperPoint r) {
        return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    };
    const PaperPoint from = a.target;
    const PaperPoint to = a.leader_end(column);
    const PaperPoint other_from = b.target;
    const PaperPoint other_to = b.leader_end(column);
    return side(from, to, other_from) * side(from, to, other_to) < 0 &&
           side(other_from, other_to, from) * side(other_from, other_to, to) < 0;
}

} // namespace

TEST_CASE("a label alone stands at the height of its target") {
    const auto placed = place_labels({{"skim", {10, 30}, 0}}, column);
    REQUIRE(placed.size() == 1);
    CHECK(placed[0].lines == std::vector<std::string>{"skim"});
    CHECK(std::fabs(placed[0].leader_end(column).y - 30) < 0.5);
}

TEST_CASE("labels never overlap, leave their column or cross their leaders, wherever their targets are") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> x(0, 45);
    std::uniform_real_distribution<double> y(-5, 65);
    std::uniform_int_distribution<int> many(1, 20);
    for (int run = 0; run < 500; ++run) {
        std::vector<Label> labels;
        for (int i = many(random); i > 0; --i)
            labels.push_back(
                {i % 3 == 0 ? "a text of two or three lines" : "short", {x(random), y(random)}, i});
        const auto placed = place_labels(labels, column);
        CHECK_FALSE(placed.empty());
        double below = column.top;
        for (const PlacedLabel& one : placed) {
            CHECK(one.top >= below - 1e-9);
            below = one.top + one.height;
            for (const std::string& line : one.lines)
                CHECK(text_width(line) <= column.right - column.left);
            for (const PlacedLabel& other : placed)
                CHECK_FALSE(leaders_cross(one, other));
        }
        CHECK(below <= column.bottom + 1e-9);
    }
}

TEST_CASE("where there is no room the labels of the highest rank are left out") {
    std::vector<Label> labels;
    for (int i = 0; i < 30; ++i)
        labels.push_back({"label", {10, 30}, 30 - i});
    const auto placed = place_labels(labels, column);
    CHECK(placed.size() == 13); // 60 mm over 3.836 mm and the gap of 0.5 mm
    for (const PlacedLabel& one : placed)
        CHECK(one.rank <= 13);
    CHECK(place_labels({{std::string(40, 'm'), {0, 0}, 0}}, column).empty());
    CHECK(place_labels({}, column).empty());
}

TEST_CASE("a text is broken at blanks, but not between a number and its unit") {
    CHECK(wrap_label("weld to " + held_together("Ø 86.0 mm"), 18) ==
          std::vector<std::string>{"weld to", "Ø\u00A086.0\u00A0mm"});
    CHECK(wrap_label("one two", 100) == std::vector<std::string>{"one two"});
    CHECK(wrap_label("", 10).empty());
}

TEST_CASE("the width of a text is on the wide side for figures and letters") {
    // In DejaVu Sans, the widest of the common faces, a figure is 0.636 of the size wide and an m 0.974
    // (read from the font file).
    CHECK(text_width("0123456789", 1) >= 6.36);
    CHECK(text_width("mm", 1) >= 2 * 0.974);
    CHECK(text_width("µ", 1) == text_width("°", 1));
}

TEST_CASE("rings are numbered as there is room: all, or the first, every fifth, tenth … and the last") {
    using Numbers = std::vector<int>;
    CHECK(numbers_shown(4, 0.5) == Numbers{1, 2, 3, 4});
    CHECK(numbers_shown(12, 2) == Numbers{1, 5, 10, 12});
    CHECK(numbers_shown(23, 1.5) == Numbers{1, 5, 10, 15, 20, 23});
    CHECK(numbers_shown(92, 7) == Numbers{1, 10, 20, 30, 40, 50, 60, 70, 80, 92});
    CHECK(numbers_shown(100, 7) == Numbers{1, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100});
    CHECK(numbers_shown(3, 5) == Numbers{1});
    CHECK(numbers_shown(1, 50) == Numbers{1});
    CHECK(numbers_shown(0, 1).empty());
    for (int count = 1; count < 300; count += 7)
        for (double room = 0.3; room < 40; room *= 1.7) {
            const auto shown = numbers_shown(count, room);
            for (std::size_t i = 1; i < shown.size(); ++i)
                CHECK(shown[i] - shown[i - 1] >= room);
        }
}
