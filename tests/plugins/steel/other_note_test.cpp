#include <catch2/catch.hpp>

#include "asking.hpp"
#include "steel/hydrogen_annex.hpp"

// Each flag and each note of Table C.1, the annex, Séférian and the carbon equivalents, compared whole.

using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

struct Row {
    Numbers numbers;
    std::uint32_t flags;
    std::string note;
};

void check(const std::vector<Row>& rows, const char* method) {
    for (const Row& row : rows) {
        const Said said = ask_steel("preheat", row.numbers);
        INFO(row.note);
        CHECK(said.method(method).flags == row.flags);
        CHECK(said.method(method).note == row.note);
    }
}

Numbers with_base(double carbon, double manganese) {
    return with(usual(), "base_", plain_steel(carbon, manganese));
}

} // namespace

TEST_CASE("Table C.1 says where it was read, and why not") {
    const std::uint32_t second = RF_SECOND_OPINION;
    const Numbers usual_one = usual();
    check(
        {{usual_one, second | RF_NONE_NEEDED,
          "read at 0.43 %, 1.0 kJ/mm and over 3 to 5 ml/100 g: none up to a combined thickness of 100 mm, "
          "here 50 mm"},
         {with(with_base(0.25, 1.20), "heat_input_J_per_m", 2e6), second | RF_NONE_NEEDED,
          "read at 0.49 %, 2.0 kJ/mm and over 3 to 5 ml/100 g: none up to a combined thickness of 100 mm, "
          "here 50 mm"},
         {with(usual_one, "hydrogen_mL_per_100g", 16), second | RF_NO_FIGURE,
          "read at 0.43 %, 1.0 kJ/mm and over 15 ml/100 g: none up to a combined thickness of 40 mm, here "
          "50 mm"},
         {without(usual_one, "hydrogen_mL_per_100g"), second | RF_NO_FIGURE,
          "read at 0.43 %, 1.0 kJ/mm and over 15 ml/100 g: none up to a combined thickness of 40 mm, here "
          "50 mm; "
          "hydrogen is not known"},
         {without(with(usual_one, "hydrogen_mL_per_100g", 8), "combined_thickness_m"), second | RF_NO_FIGURE,
          "read at 0.43 %, 1.0 kJ/mm and over 5 to 10 ml/100 g: none up to a combined thickness of 60 mm, "
          "here 100 mm; "
          "the combined thickness is not known, taken as 100 mm"},
         {without(usual_one, "heat_input_J_per_m"), second | RF_NOT_USABLE, "heat input is not known"},
         {with(usual_one, "heat_input_J_per_m", 0.9e6), second | RF_NOT_USABLE,
          "heat input of 0.9 kJ/mm is under its first column of 1.0 kJ/mm"},
         {with_base(0.26, 1.20), second | RF_NOT_USABLE, "C 0.26 % is over the 0.25 % it was made for"},
         {with_base(0.24, 1.62), second | RF_NOT_USABLE, "CE(IIW) 0.51 % is over its last column of 0.49 %"},
         {with_base(0.03, 1.20), second | RF_NONE_NEEDED,
          "read at 0.43 %, 1.0 kJ/mm and over 3 to 5 ml/100 g: none up to a combined thickness of 100 mm, "
          "here 50 mm"}},
        table_c1_name);
}

// EN 1011-2:2001 C.2.1 (memory): over the limit of any element the table does not answer.
TEST_CASE("Table C.1 keeps to the limit of each element of method A") {
    const Percent limits = {{"C", 0.25}, {"Si", 0.8}, {"Mn", 1.7},  {"Cr", 0.9},
                            {"Cu", 1.0}, {"Ni", 2.5}, {"Mo", 0.75}, {"V", 0.20}};
    for (const auto& [element, limit] : limits) {
        INFO(element);
        const Numbers low = with(usual(), "base_", plain_steel(0.05, 0.5));
        const std::string name = "base_" + element + "_pct";
        CHECK((ask_steel("preheat", with(low, name, limit)).method(table_c1_name).flags & RF_NOT_USABLE) ==
              0);
        CHECK(ask_steel("preheat", with(low, name, limit * 1.001)).method(table_c1_name).flags ==
              (RF_SECOND_OPINION | RF_NOT_USABLE));
    }
}

TEST_CASE("the annex says by which path, and what it assumed") {
    const std::uint32_t second = RF_SECOND_OPINION;
    const Numbers usual_one = usual();
    const Numbers measured = with(usual_one, "hydrogen_is_measured", 1);
    check({{usual_one, second, "by its grid, group D; medium restraint"},
           {with(with(usual_one, "restraint", 1), "wall_m", 0.009), second | RF_NONE_NEEDED,
            "by its grid, group D; low restraint"},
           {with(usual_one, "hydrogen_mL_per_100g", 4.9), second, "by its grid, group C; medium restraint"},
           {with(usual_one, "hydrogen_mL_per_100g", 10), second, "by its grid, group E; medium restraint"},
           {without(usual_one, "hydrogen_mL_per_100g"), second,
            "by its grid, group E; hydrogen is not known, taken as uncontrolled; medium restraint"},
           {with(measured, "hydrogen_mL_per_100g", 10), second,
            "by the measured hydrogen, index 4.12, group D; medium restraint"},
           {with(measured, "hydrogen_mL_per_100g", 0.5), second,
            "by the measured hydrogen, taken as 1 ml/100 g, index 3.12, group B; medium restraint"},
           {without(measured, "hydrogen_mL_per_100g"), second,
            "by its grid, group E; hydrogen is not known, taken as uncontrolled; medium restraint"},
           {without(usual_one, "restraint"), second,
            "by its grid, group D; high restraint, since it is not known"},
           {without(usual_one, "wall_m"), second,
            "by its grid, group D; medium restraint; the wall is not known, taken as over 3 in"},
           {without(usual_one, "base_V_pct"), second,
            "by its grid, group D; medium restraint; V of the base metal is not stated and counts as 0"},
           {with_base(0.30, 1.60), second | RF_OUT_OF_COMPOSITION,
            "past its grid, taken as its last group G; medium restraint; Pcm 0.38 % is not under the 0.38 % "
            "its grid ends "
            "at"},
           {with(with(with_base(0.50, 0.80), "hydrogen_is_measured", 1), "hydrogen_mL_per_100g", 8),
            second | RF_OUT_OF_COMPOSITION,
            "by the measured hydrogen, index 7.38, taken as its last group G; medium restraint; index 7.38 "
            "by the measured "
            "hydrogen is over its last group, 7.0"}},
          annex_name);
}

// The rest of the table stands in the reference from memory only; these cells guard its reading, not its
// figures.
TEST_CASE("past its last column the annex is told with its last column, out of its range") {
    const Numbers hard_one = with(usual(), "base_", plain_steel(0.35, 0.80)); // Pcm 0.39
    const Said by_class = ask_steel("preheat", hard_one);
    CHECK(by_class.method(annex_name).flags == (RF_SECOND_OPINION | RF_OUT_OF_COMPOSITION));
    CHECK_THAT(degC(by_class.method(annex_name)), WithinAbs((320.0 - 32) * 5 / 9, 1e-9)); // medium, group G
}

TEST_CASE("the annex takes the limits of its bands as printed") {
    using ringfill::steel::annex_degF;
    CHECK_FALSE(annex_degF('D', 1, 0.374));
    CHECK(annex_degF('D', 1, 0.375) == 140.0);
    CHECK(annex_degF('D', 1, 0.75) == 140.0);
    CHECK(annex_degF('D', 1, 0.751) == 175.0);
    CHECK(annex_degF('D', 1, 1.5) == 175.0);
    CHECK(annex_degF('D', 1, 1.501) == 200.0);
    CHECK(annex_degF('A', 2, 3) == 65.0);
    CHECK(annex_degF('A', 2, 3.001) == 200.0);
    CHECK(annex_degF('A', 2, 1) == 65.0); // one print has "< 65", the other 65
    CHECK_FALSE(annex_degF('A', 3, 0.5));
}

TEST_CASE("a higher group, restraint or thickness never has a lower figure in the annex") {
    using ringfill::steel::annex_degF;
    const auto figure = [](int group, int restraint, double thickness) {
        return annex_degF(static_cast<char>('A' + group), restraint, thickness).value_or(0);
    };
    constexpr double thicknesses[] = {0.2, 0.5, 1, 2, 4};
    for (int group = 0; group < 7; ++group)
        for (int restraint = 1; restraint <= 3; ++restraint)
            for (int band = 0; band < 5; ++band) {
                INFO("group " << group << ", restraint " << restraint << ", band " << band);
                const double here = figure(group, restraint, thicknesses[band]);
                CHECK((group == 6 || figure(group + 1, restraint, thicknesses[band]) >= here));
                CHECK((restraint == 3 || figure(group, restraint + 1, thicknesses[band]) >= here));
                CHECK((band == 4 || figure(group, restraint, thicknesses[band + 1]) >= here));
            }
}

TEST_CASE("between two printed bands of the index the higher group holds") {
    using ringfill::steel::group_by_index;
    CHECK(group_by_index(3.0) == 'A');
    CHECK(group_by_index(3.05) == 'B');
    CHECK(group_by_index(3.5) == 'B');
    CHECK(group_by_index(5.55) == 'G');
    CHECK(group_by_index(7.0) == 'G');
    CHECK_FALSE(group_by_index(7.01));
}

// 9.525 mm is 3/8 in by definition; on its way through metres it must not fall under it.
TEST_CASE("a wall of exactly 3/8 in is in the band from 3/8 in on, and 65 degF is a figure") {
    const Numbers numbers = with(with_base(0.10, 1.20), "restraint", 3); // Pcm 0.16, H2: group B
    CHECK(ask_steel("preheat", with(numbers, "wall_m", 0.0095)).method(annex_name).flags ==
          (RF_SECOND_OPINION | RF_NONE_NEEDED));
    const Said said = ask_steel("preheat", with(numbers, "wall_m", 0.009525));
    CHECK(said.method(annex_name).flags == RF_SECOND_OPINION);
    CHECK_THAT(degC(said.method(annex_name)), WithinAbs((65.0 - 32) * 5 / 9, 1e-9));
}

TEST_CASE("Seferian says what it assumed, and why not") {
    const std::uint32_t second = RF_SECOND_OPINION;
    const std::uint32_t lean = second | RF_OUT_OF_COMPOSITION;
    const std::string told = "told only, since the metal holds no more than 0.25 % C";
    const Numbers medium = with_base(0.30, 1.20);
    check({{medium, second, ""},
           {usual(), lean, told},
           {without(medium, "wall_m"), second, "the wall is not known, taken as 90 mm"},
           {without(medium, "base_Cr_pct"), second, "Cr of the base metal is not stated and counts as 0"},
           {with_base(0.12, 0.20), lean | RF_NONE_NEEDED, told},
           {with_base(0.09, 1.20), second | RF_NOT_USABLE, "C 0.09 % is under the 0.10 % it was made for"},
           {with_base(0.61, 1.20), second | RF_NOT_USABLE, "C 0.61 % is over the 0.60 % it was made for"},
           {with(medium, "base_Cr_pct", 4.0), second | RF_NOT_USABLE,
            "5.20 % of alloy is over the 5 % it was made for"},
           {with(with_base(0.50, 1.60), "wall_m", 2), second | RF_NO_FIGURE,
            "its equation gives 940 °C, which is no preheat"}},
          seferian_name);
}

TEST_CASE("the carbon equivalents say what was not stated") {
    Numbers only = with({{"base_P_pct", 0.02}, {"base_S_pct", 0.02}, {"base_Si_pct", 0.3}}, "base_",
                        {{"C", 0.2}, {"Mn", 0.9}});
    const Said said = ask_steel("preheat", only);
    CHECK_THAT(said.value("CE_IIW_pct").number, WithinAbs(0.2 + 0.9 / 6 + 0.03, 1e-12));
    CHECK(said.value("CE_IIW_pct").note ==
          "only C and Mn are stated, so 0.03 is added for the rest (EN 1011-2 C.2.1)");
    CHECK(said.value("Pcm_pct").note ==
          "Cu, Cr, Ni, Mo, V and B of the base metal are not stated and count as 0");
    only["base_Cu_pct"] = 0.15;
    const Said stated = ask_steel("preheat", only);
    CHECK_THAT(stated.value("CE_IIW_pct").number, WithinAbs(0.2 + 0.9 / 6 + 0.15 / 15, 1e-12));
    CHECK(stated.value("CE_IIW_pct").note ==
          "Cr, Mo, V and Ni of the base metal are not stated and count as 0");
}
