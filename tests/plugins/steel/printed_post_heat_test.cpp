#include <catch2/catch.hpp>

#include "asking.hpp"

using namespace ringfill::testing;

namespace {

/// A clause read on an engineering forum, quoted from a client's specification: with CE(IIW) of 0.5 or more,
/// bake at 200 °C at least, 1 h per inch of section, 1 h at least. Two rows by its rule.
struct Row {
    double carbon; ///< with 0.90 % Mn makes the CE(IIW) of the row
    double section_in;
    double least_hours;
};

constexpr Row rows[] = {{0.47, 3, 3}, {0.40, 0.5, 1}};

} // namespace

TEST_CASE("hydrogen release is never less than the clause asks for") {
    for (const Row& row : rows) {
        INFO("section of " << row.section_in << " in");
        Numbers numbers = with(usual(), "base_", plain_steel(row.carbon, 0.90));
        numbers["wall_m"] = row.section_in * 0.0254;
        const Said said = ask_steel("advice", numbers);
        CHECK(said.value("post_heat_K").number >= 200 + 273.15);
        CHECK(said.value("post_heat_s").number >= row.least_hours * 3600);
    }
}
