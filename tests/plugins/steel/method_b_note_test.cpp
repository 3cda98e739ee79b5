#include <catch2/catch.hpp>

#include "asking.hpp"
#include "steel/method_b.hpp"

// Each flag and each note of method B, compared whole. The figures of these answers are judged elsewhere.

using namespace ringfill::testing;
using ringfill::steel::Figure;

namespace {

struct Row {
    Numbers numbers;
    std::uint32_t flags;
    std::string note;
};

Percent hard() {
    return plain_steel(0.50, 0.80); // CET 0.58
}

std::string of_hard() {
    return "C 0.50 % is over the 0.32 % it was made for; CET of 0.58 % is taken as the 0.50 % it ends at";
}

void check_rows(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        const Said said = ask_steel("preheat", row.numbers);
        INFO(row.note);
        CHECK(said.method(method_b_name).flags == row.flags);
        CHECK(said.method(method_b_name).note == row.note);
    }
}

} // namespace

TEST_CASE("method B within its range says what it had to assume") {
    const Numbers usual_one = usual();
    check_rows({
        {usual_one, 0, ""},
        {with(usual_one, "wall_m", 0.010), 0, ""},
        {with(usual_one, "wall_m", 0.090), 0, ""},
        {without(usual_one, "wall_m"), 0, "the wall is not known, taken as 90 mm"},
        {without(usual_one, "hydrogen_mL_per_100g"), 0, "hydrogen is not known, taken as 30 ml/100 g"},
        {with(usual_one, "hydrogen_mL_per_100g", 20.5), 0,
         "hydrogen of 20.5 ml/100 g is over the 20 it was made for"},
        {with(usual_one, "hydrogen_mL_per_100g", 0.6), 0, "hydrogen of 0.6 ml/100 g is taken as 1"},
        {without(usual_one, "heat_input_J_per_m"), 0, "heat input is not known, taken as 0.5 kJ/mm"},
        {with(usual_one, "heat_input_J_per_m", 0.4e6), 0, "heat input of 0.4 kJ/mm taken as 0.5"},
        {with(usual_one, "heat_input_J_per_m", 4.4e6), 0, "heat input of 4.4 kJ/mm taken as 4.0"},
        {with(usual_one, "yield_MPa", 1100), 0,
         "a yield strength of 1100 MPa is over the 1000 MPa it was made for"},
        {without(without(usual_one, "base_Mo_pct"), "base_Cr_pct"), 0,
         "Mo and Cr of the base metal are not stated and count as 0"},
        {without(usual_one, "base_Ni_pct"), 0, "Ni of the base metal is not stated and counts as 0"},
        {without(usual_one, "deposit_Cu_pct"), 0, "Cu of the deposit is not stated and counts as 0"},
        {without(usual_one, "deposit_C_pct"), 0,
         "the weld metal was not checked, its composition is not known"},
        {without(usual_one, "deposit_Mn_pct"), 0,
         "the weld metal was not checked, its composition is not known"},
        {with(usual_one, "deposit_Cr_pct", 16.1), 0, "the weld metal was not checked, it is not ferritic"},
        {with(usual_one, "deposit_C_pct", 2.1), 0, "the weld metal was not checked, it is not ferritic"},
        {with(without(usual_one, "deposit_C_pct"), "deposit_Al_pct", 8.5), 0,
         "the weld metal was not checked, it is not ferritic"},
        {with(usual_one, "deposit_C_pct", 0.22), 0,
         "the deposit governs, its CET of 0.32 % with 0.03 % on top"},
        {with(with(usual_one, "base_", plain_steel(0.08, 1.30)), "deposit_", plain_steel(0.05, 0.8)),
         RF_NONE_NEEDED, ""},
    });
}

TEST_CASE("method B outside its walls or its steels answers at the edge, marked") {
    const std::uint32_t thickness = RF_OUT_OF_THICKNESS | RF_AT_EDGE;
    const std::uint32_t composition = RF_OUT_OF_COMPOSITION | RF_AT_EDGE;
    const auto metal = [](const char* element, double percent) {
        return with(usual(), std::string("base_") + element + "_pct", percent);
    };
    check_rows({
        {with(usual(), "wall_m", 0.0099), thickness,
         "a wall of 9.9 mm is under the 10 mm it was made for; the wall taken as 10 mm"},
        {with(usual(), "wall_m", 0.120), thickness,
         "a wall of 120 mm is over the 90 mm it was made for; the wall taken as 90 mm"},
        {with(usual(), "base_", hard()), composition, of_hard()},
        {with(with(usual(), "base_", hard()), "wall_m", 0.120), composition | RF_OUT_OF_THICKNESS,
         of_hard() + "; a wall of 120 mm is over the 90 mm it was made for; the wall taken as 90 mm"},
        {metal("C", 0.33), composition, "C 0.33 % is over the 0.32 % it was made for"},
        {metal("Si", 0.81), composition, "Si 0.81 % is over the 0.80 % it was made for"},
        {metal("B", 0.0051), composition, "B 0.0051 % is over the 0.005 % it was made for"},
        {metal("Ni", 2.6), composition | RF_SECOND_OPINION, "Ni 2.60 % is over the 2.50 % it was made for"},
    });
}

// A figure over 20 ml/100 g is marked, over 30 there is none.
TEST_CASE("hydrogen never counts at a lower edge") {
    const auto at = [](double hydrogen) {
        return ask_steel("preheat", with(usual(), "hydrogen_mL_per_100g", hydrogen)).method(method_b_name);
    };
    CHECK(at(30).number > at(20).number + 20);
    CHECK((at(30.1).flags & RF_NO_FIGURE) != 0);
    CHECK(at(30.1).note ==
          "hydrogen of 30.1 ml/100 g is over the 20 it was made for; over 30 ml/100 g it gives no "
          "figure: take another filler");
}

TEST_CASE("what the limits reach goes before the composition") {
    const Said said = ask_steel("preheat", with(usual(), "reached_CET_pct", 0.40));
    CHECK_THAT(degC(said.method(method_b_name)),
               Catch::WithinAbs(ringfill::steel::method_b_degC(0.40, 25, 5, 1.5), 1e-9));
    CHECK(said.value("CET_pct").number == 0.40);
    CHECK(said.value("CET_pct").note ==
          "the largest that a composition within the limits of its standard reaches");
}

// Less carbon, manganese and CET than the equation was made for need no more preheat than its least, 0.20.
TEST_CASE("method B counts softer steel than its range as the softest in it") {
    const Numbers mild =
        with(with(usual(), "base_", plain_steel(0.09, 0.60)), "deposit_", plain_steel(0.05, 0.5));
    const Said softest = ask_steel("preheat", with(mild, "base_", plain_steel(0.14, 0.60)));
    const Said soft = ask_steel("preheat", mild);
    CHECK((soft.method(method_b_name).flags & ~RF_NONE_NEEDED) == 0);
    CHECK(soft.method(method_b_name).note == "CET of 0.15 % is taken as the 0.20 % it begins at");
    CHECK(soft.method(method_b_name).number == softest.method(method_b_name).number);
    const Said lean = ask_steel("preheat", with(usual(), "base_Mn_pct", 0.49));
    CHECK((lean.method(method_b_name).flags & ~RF_NONE_NEEDED) == 0);
    CHECK(lean.method(method_b_name).note == "Mn 0.49 % is under the 0.50 % it was made for");
}

// EN 1011-2:2001 C.3 (memory). Every limit is taken and a hair over it is not.
TEST_CASE("method B stays within the limit of each element") {
    const Percent limits = {{"C", 0.32},  {"Si", 0.8}, {"Mn", 1.9},  {"Cr", 1.5}, {"Cu", 0.7}, {"Mo", 0.75},
                            {"Nb", 0.06}, {"Ni", 2.5}, {"Ti", 0.12}, {"V", 0.18}, {"B", 0.005}};
    for (const auto& [element, limit] : limits) {
        INFO(element);
        const std::string name = "base_" + element + "_pct";
        CHECK(ask_steel("preheat", with(usual(), name, limit)).method(method_b_name).flags == 0);
        CHECK((ask_steel("preheat", with(usual(), name, limit * 1.001)).method(method_b_name).flags &
               RF_OUT_OF_COMPOSITION) != 0);
    }
}
