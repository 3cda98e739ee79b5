#include <catch2/catch.hpp>

#include <fstream>
#include <regex>

#include "heat/boss_cases.hpp"

using namespace ringfill;
using Catch::WithinAbs;

// Rows of a three-dimensional finite-volume reference with a moving arc, independent of this model; the file
// tells at its head what was run. The tolerance in a row rules.
TEST_CASE("the boss agrees with a three-dimensional run with a moving arc in every row") {
    std::map<std::string, testing::ReferenceRun> runs;
    for (const auto& [name, given] : testing::reference_cases)
        runs.try_emplace(name, given);
    std::ifstream file(RINGFILL_ROOT "/tests/heat/boss_heat.csv");
    const std::regex row(R"re(([a-z]+),"?([RC]: [^"]*?)"?,([0-9.]+),(C|s),([0-9.]+))re");
    int rows = 0;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.starts_with('#') || line.starts_with("case,"))
            continue;
        CAPTURE(line);
        std::smatch cell;
        REQUIRE(std::regex_match(line, cell, row));
        const auto& values = runs.at(cell[1]).values();
        REQUIRE(values.contains(cell[2]));
        CHECK_THAT(values.at(cell[2]), WithinAbs(std::stod(cell[3]), std::stod(cell[5])));
        ++rows;
    }
    CHECK(rows == 60);
}
