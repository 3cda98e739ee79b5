#include <catch2/catch.hpp>

#include <ringfill/take/take.hpp>

#include "take/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;

TEST_CASE("wires come first, then gases, then what wears out") {
    WireUse second = wire_use();
    second.filler = "steel/X2";
    second.wire = kg(120);
    const auto lines =
        take({wire_use(), second}, {}, {gas_use("M21", "argon_mixture"), gas_use("C1", "carbon_dioxide")},
             0.1, round_packs(), round_lives(), UnitSystem::metric);
    std::vector<std::string> items;
    for (const Need& line : lines)
        items.push_back(line.item);
    CHECK(items == std::vector<std::string>{"wire steel/X1 1.2 mm", "wire steel/X2 1.2 mm", "gas M21",
                                            "gas C1", "contact tips 1.2 mm X1", "gas nozzles 1.2 mm X1",
                                            "contact tips 1.2 mm X2", "gas nozzles 1.2 mm X2",
                                            "liner 1.2 mm X2"});
}

TEST_CASE("nothing used is nothing taken") {
    CHECK(take({}, {}, {}, 0.1, round_packs(), round_lives(), UnitSystem::metric).empty());
}
