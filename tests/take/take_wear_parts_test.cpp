#include <catch2/catch.hpp>

#include <ringfill/take/needs.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::vector<Need> lines_for(const FillerUse& use, UnitSystem units = UnitSystem::metric) {
    return wear_part_needs(use, round_lives(), units);
}

} // namespace

// Worked by hand: 5 h of arc at 2 h a tip are 2.5, so 3 and a spare; at 20 h a nozzle one and a spare.
TEST_CASE("tips and nozzles are counted by arc time, with one spare") {
    const auto lines = lines_for(wire_use());
    REQUIRE(lines.size() == 2);
    CHECK(item(lines[0]) == "contact tips 1.2 mm X1");
    CHECK(lines[0].need == 3);
    CHECK(lines[0].reserve == 1);
    CHECK(unit(lines[0]) == "pieces");
    CHECK(lines[0].supplied == 4);
    CHECK(lines[0].spare == 0);
    CHECK(lines[0].cover.empty());
    CHECK(lines[0].why == "5 h 00 min of arc, one lasts 2 h 00 min; and one spare");
    CHECK(lines[0].source == "tips");
    CHECK(item(lines[1]) == "gas nozzles 1.2 mm X1");
    CHECK(lines[1].need == 1);
    CHECK(lines[1].supplied == 2);
    CHECK(lines[1].why == "5 h 00 min of arc, one lasts 20 h 00 min; and one spare");
    CHECK(lines[1].source == "nozzles");
}

TEST_CASE("a tip that just lasts is not doubled") {
    FillerUse use = wire_use();
    use.arc = hours(4);
    CHECK(lines_for(use)[0].need == 2);
    use.arc = hours(4.001);
    CHECK(lines_for(use)[0].need == 3);
}

TEST_CASE("a liner is taken once its life is passed") {
    FillerUse use = wire_use();
    use.wire = kg(100);
    CHECK(lines_for(use).size() == 2);
    use.wire = kg(100.01);
    const auto lines = lines_for(use);
    REQUIRE(lines.size() == 3);
    CHECK(item(lines[2]) == "liner 1.2 mm X1");
    CHECK(lines[2].need == 1);
    CHECK(lines[2].reserve == 0);
    CHECK(lines[2].supplied == 1);
    CHECK(unit(lines[2]) == "pieces");
    CHECK(lines[2].why == "100.01 kg of wire, one lasts 100.00 kg");
    CHECK(lines[2].source == "liners");
}

TEST_CASE("in inch units parts are told with the wire in inches") {
    FillerUse use = wire_use();
    use.wire = kg(120);
    const auto lines = lines_for(use, UnitSystem::inch);
    REQUIRE(lines.size() == 3);
    CHECK(item(lines[0], UnitSystem::inch) == "contact tips 0.047 in X1");
    CHECK(lines[2].why == "264.55 lb of wire, one lasts 220.46 lb"); // 120 and 100 kg over 0.45359237
}
