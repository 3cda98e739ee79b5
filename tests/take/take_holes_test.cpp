#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::vector<std::string> lines_of(const std::vector<WornBore>& bores, UnitSystem units = UnitSystem::metric) {
    std::vector<std::string> lines;
    for (const Need& line : hole_needs(bores)) {
        CHECK(line.supplied == line.need + line.reserve);
        CHECK(line.spare == 0);
        CHECK(line.source == "practice");
        lines.push_back(std::to_string(static_cast<int>(line.need)) + " + " +
                        std::to_string(static_cast<int>(line.reserve)) + ' ' + unit(line) + " | " +
                        item(line, units) + " | " + line.why);
    }
    return lines;
}

/// So many bores of one hole each.
WornBore use_of(const std::string& name, double diameter_mm, int count, bool fitting) {
    WornBore bore;
    bore.name = name;
    bore.count = count;
    Hole& hole = bore.holes.emplace_back();
    hole.diameter = millimetres(diameter_mm);
    hole.other_end = fitting ? "fitting" : "open";
    return bore;
}

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("no holes take nothing") {
    CHECK(lines_of({}).empty());
}

// Worked by hand: 2 + 4 holes of 10 mm, the four with fittings, and one of 6 mm.
TEST_CASE("holes take a rod each, a drill a diameter and a new fitting where one was") {
    CHECK(lines_of({use_of("arm root", 10, 2, false), use_of("link", 6, 1, false),
                    use_of("boom foot", 10, 4, true)}) ==
          Lines{"6 + 1 pieces | plug rods 10.0 mm | a piece of copper or carbon rod in each hole before "
                "welding (2 in arm root, 4 in boom foot); and one spare",
                "1 + 0 pieces | drill 10.0 mm | to reopen the plugged holes after boring",
                "4 + 1 pieces | fittings, hole 10.0 mm | heat ruins the old ones; and one spare",
                "1 + 1 pieces | plug rods 6.0 mm | a piece of copper or carbon rod in each hole before "
                "welding (1 in link); and one spare",
                "1 + 0 pieces | drill 6.0 mm | to reopen the plugged holes after boring"});
}

TEST_CASE("in inch units holes are told in inches") {
    CHECK(lines_of({use_of("link", 6.35, 1, false)}, UnitSystem::inch) ==
          Lines{"1 + 1 pieces | plug rods 0.250 in | a piece of copper or carbon rod in each hole before "
                "welding (1 in link); and one spare",
                "1 + 0 pieces | drill 0.250 in | to reopen the plugged holes after boring"});
}

TEST_CASE("a single fitting is replaced too") {
    CHECK(lines_of({use_of("link", 10, 1, true)}).back() ==
          "1 + 1 pieces | fittings, hole 10.0 mm | heat ruins the old ones; and one spare");
}

TEST_CASE("holes that differ by a tenth of a millimetre take a drill each") {
    CHECK(lines_of({use_of("link", 10, 1, false), use_of("link", 10.1, 1, false)}).size() == 4);
}
