#include <catch2/catch.hpp>

#include "asking.hpp"

// Every sentence of the advice, compared whole, and the values that go with it.

using namespace ringfill::testing;

namespace {

const std::string soak =
    "Heat until the face away from the flame is at the preheat and stays there. Where only the "
    "heated face can be read, take the flame away and wait 2 min for every 25 mm (1 in) of wall "
    "before you read it";
const std::string wait_48 =
    "Wait 48 h from cold before the crack test, because cracks by hydrogen come late: ";
const std::string wait_24 =
    "Wait 24 h from cold before the crack test, because cracks by hydrogen come late: ";

Numbers with_base(double carbon, double manganese) {
    return with(usual(), "base_", plain_steel(carbon, manganese));
}

/// The value, or 0 when none was said.
double value_of(const Said& said, const char* name) {
    return said.has_value(name) ? said.value(name).number : 0;
}

} // namespace

TEST_CASE("the soak is told with the minutes of the wall") {
    CHECK(ask_steel("advice", usual()).texts("soak") == soak + ", here 2 min. [ISO13916]\n");
    CHECK(ask_steel("advice", with(usual(), "wall_m", 0.026)).texts("soak") ==
          soak + ", here 3 min. [ISO13916]\n");
    CHECK(ask_steel("advice", without(usual(), "wall_m")).texts("soak") == soak + ". [ISO13916]\n");
}

// How it cools and whether it is held is decided by the program, which knows the maximum and the group.
TEST_CASE("the rules say nothing of cooling and of holds") {
    for (const Numbers& numbers :
         {usual(), with_base(0.45, 1.20), with(with_base(0.12, 1.40), "yield_MPa", 690)}) {
        const Said said = ask_steel("advice", numbers);
        CHECK(said.texts("slow_cooling").empty());
        CHECK(said.texts("post_heat").empty());
        for (const char* name : {"post_heat_K", "post_heat_s", "cooling_max_K_per_h"})
            CHECK_FALSE(said.has_value(name));
    }
}

TEST_CASE("a denied grade's high yield strength still asks for its wait, a low one is not trusted") {
    const Numbers soft = with(with_base(0.10, 0.70), "grade_is_denied", 1);
    CHECK(value_of(ask_steel("advice", with(soft, "yield_MPa", 690)), "crack_test_wait_s") == 48 * 3600.0);
    CHECK(ask_steel("advice", with(soft, "yield_MPa", 250))
              .texts("crack_test")
              .starts_with("If its yield strength, which is not known here, is over 460 MPa"));
}

TEST_CASE("the wait before the crack test is told with its reason") {
    struct Row {
        Numbers numbers;
        double hours;
        std::string text;
    };
    const std::vector<Row> rows = {
        {with_base(0.15, 1.20), 0, ""},
        {with_base(0.20, 1.20), 24,
         wait_24 + "its carbon equivalent of 0.40 % is not under 0.40 %. [practice]\n"},
        {with_base(0.40, 1.20), 24,
         wait_24 + "its carbon equivalent of 0.60 % is not under 0.40 %. [practice]\n"},
        {with_base(0.40, 1.26), 48, wait_48 + "its carbon equivalent of 0.61 % is over 0.60 %. [D10.10]\n"},
        {with(with_base(0.15, 1.20), "yield_MPa", 461), 48,
         wait_48 + "its yield strength of 461 MPa is over 460 MPa. [D10.10]\n"},
        {without(with_base(0.20, 1.20), "yield_MPa"), 48,
         wait_48 + "its yield strength is not known. [D10.10]\n"},
        {without(with_base(0.15, 1.20), "yield_MPa"), 0,
         "If its yield strength, which is not known here, is over 460 MPa, wait 48 h from cold before the "
         "crack test. "
         "[D10.10]\n"},
        {{}, 48, wait_48 + "the composition of the base metal is not known. [D10.10]\n"},
    };
    for (const Row& row : rows) {
        INFO(row.text);
        const Said said = ask_steel("advice", row.numbers);
        CHECK(value_of(said, "crack_test_wait_s") == row.hours * 3600);
        CHECK(said.texts("crack_test") == row.text);
    }
}
