#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

#include <ringfill/report/draw/svg.hpp>

#include "report/draw/drawing_parts.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

std::vector<PaperPoint> circle(double radius) {
    std::vector<PaperPoint> points;
    for (int i = 0; i < 720; ++i)
        points.push_back(
            {radius * std::cos(i * std::numbers::pi / 360), radius * std::sin(i * std::numbers::pi / 360)});
    return points;
}

double length_of(const std::string& commands) {
    const auto points = points_of(commands);
    double sum = 0;
    for (std::size_t i = 0; i + 1 < points.size(); i += 2)
        sum += std::hypot(points[i + 1].x - points[i].x, points[i + 1].y - points[i].y);
    return sum;
}

} // namespace

TEST_CASE("lines of a hatching times their spacing make the area they fill") {
    // A fine hatching is a sum over strips: it comes to the area of the shape.
    const Hatching fine{0.05, 45};
    CHECK_THAT(0.05 * length_of(hatch({circle(10)}, fine)), WithinRel(std::numbers::pi * 100, 2e-3));
    CHECK_THAT(0.05 * length_of(hatch({circle(10), circle(6)}, fine)),
               WithinRel(std::numbers::pi * 64, 2e-3));
    CHECK_THAT(0.05 * length_of(hatch({{{0, 0}, {8, 0}, {8, 3}, {0, 3}}}, {0.05, 135})), WithinRel(24, 2e-3));
}

TEST_CASE("every line of a hatching lies in its ring and has its direction") {
    const auto points = points_of(hatch({circle(10), circle(6)}, boss_hatching));
    REQUIRE(points.size() > 8);
    for (std::size_t i = 0; i + 1 < points.size(); i += 2) {
        const PaperPoint middle{(points[i].x + points[i + 1].x) / 2, (points[i].y + points[i + 1].y) / 2};
        const double radius = std::hypot(middle.x, middle.y);
        CHECK(radius > 5.99);
        CHECK(radius < 10.01);
        // 135° counter-clockwise on a paper whose y runs down: to the right and down
        const double slope = (points[i + 1].y - points[i].y) / (points[i + 1].x - points[i].x);
        CHECK(std::fabs(slope - 1) < 0.05);
    }
}

TEST_CASE("nothing to hatch gives no lines") {
    CHECK(hatch({}, weld_hatching).empty());
    CHECK(hatch({{}}, weld_hatching).empty());
    CHECK(hatch({{{1, 1}, {1, 1}, {1, 1}}}, weld_hatching).empty());
}
