#include <catch2/catch.hpp>

#include <array>

#include "asking.hpp"
#include "steel/table_c1.hpp"

using namespace ringfill::testing;
using ringfill::steel::table_c1_mm;

namespace {

struct Row {
    double ce;
    double hydrogen;
    double heat_input;
    double printed_mm;
};

// EN 1011-2:2001 with A1:2003, Table C.1, maximum combined thickness without preheat: read in a reproduction
// of page 17, all of its cells. Exact. The row of hydrogen over 15 ml/100 g is asked at 16.
constexpr Row printed[] = {
    {0.49, 16, 1.0, 25}, {0.49, 16, 2.0, 50}, {0.43, 16, 1.0, 40}, {0.43, 16, 2.0, 80}, {0.49, 12, 1.0, 30},
    {0.49, 12, 2.0, 55}, {0.43, 12, 1.0, 50}, {0.43, 12, 2.0, 90}, {0.49, 8, 1.0, 35},  {0.49, 8, 2.0, 65},
    {0.43, 8, 1.0, 60},  {0.43, 8, 2.0, 100}, {0.49, 4, 1.0, 50},  {0.49, 4, 2.0, 100}, {0.43, 4, 1.0, 100},
    {0.43, 4, 2.0, 100}, {0.49, 3, 1.0, 60},  {0.49, 3, 2.0, 100}, {0.43, 3, 1.0, 100}, {0.43, 3, 2.0, 100},
};

/// A plain steel of the row's CE(IIW): 0.25 % C and the manganese that makes it.
Numbers question(const Row& row, double combined_mm) {
    Numbers numbers = with(usual(), "base_", plain_steel(0.25, row.ce == 0.49 ? 1.44 : 1.08));
    numbers["hydrogen_mL_per_100g"] = row.hydrogen;
    numbers["heat_input_J_per_m"] = row.heat_input * 1e6;
    numbers["combined_thickness_m"] = combined_mm / 1e3;
    return numbers;
}

} // namespace

TEST_CASE("Table C.1 gives each printed thickness") {
    for (const Row& row : printed) {
        INFO("CE " << row.ce << ", " << row.hydrogen << " ml/100 g, " << row.heat_input << " kJ/mm");
        CHECK(table_c1_mm(row.ce, row.hydrogen, row.heat_input) == row.printed_mm);
    }
}

TEST_CASE("the answer by Table C.1 turns at each printed thickness") {
    for (const Row& row : printed) {
        INFO("CE " << row.ce << ", " << row.hydrogen << " ml/100 g, " << row.heat_input << " kJ/mm");
        const auto at = ask_steel("preheat", question(row, row.printed_mm));
        CHECK(at.method(table_c1_name).flags == (RF_SECOND_OPINION | RF_NONE_NEEDED));
        const auto over = ask_steel("preheat", question(row, row.printed_mm + 0.1));
        CHECK(over.method(table_c1_name).flags == (RF_SECOND_OPINION | RF_NO_FIGURE));
    }
}

// The limits of the rows are printed as over 3 to 5, over 5 to 10, over 10 to 15 and over 15 ml/100 g: read.
TEST_CASE("the limits of hydrogen in Table C.1 belong to the row below them") {
    for (const auto& [limit, below, above] :
         {std::array{3.0, 60.0, 50.0}, {5.0, 50.0, 35.0}, {10.0, 35.0, 30.0}, {15.0, 30.0, 25.0}}) {
        CHECK(table_c1_mm(0.49, limit, 1.0) == below);
        CHECK(table_c1_mm(0.49, limit + 1e-6, 1.0) == above);
    }
    CHECK(table_c1_mm(0.49, 0, 1.0) == 60.0);
}

// The reading between columns is the one that asks for more; over the last carbon equivalent and under the
// first heat input the table is silent.
TEST_CASE("Table C.1 is read on the side that asks for more, and not outside its columns") {
    CHECK(table_c1_mm(0.30, 8, 1.0) == 60.0);
    CHECK(table_c1_mm(0.4301, 8, 1.0) == 35.0);
    CHECK_FALSE(table_c1_mm(0.4901, 8, 1.0));
    CHECK(table_c1_mm(0.43, 8, 1.99) == 60.0);
    CHECK(table_c1_mm(0.43, 8, 5.0) == 100.0);
    CHECK_FALSE(table_c1_mm(0.43, 8, 0.99));
}
