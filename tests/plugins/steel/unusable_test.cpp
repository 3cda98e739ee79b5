#include <catch2/catch.hpp>

#include "asking.hpp"
#include "steel/rules.hpp"

using namespace ringfill::testing;
using ringfill::steel::Figure;

namespace {

std::vector<std::string> names_of(const Said& said) {
    std::vector<std::string> names;
    for (const Figure& method : said.methods)
        names.push_back(method.name);
    return names;
}

} // namespace

TEST_CASE("the methods come in a fixed order") {
    CHECK(names_of(ask_steel("preheat", usual())) ==
          std::vector<std::string>{method_b_name, table_c1_name, annex_name, seferian_name});
    CHECK(names_of(ask_steel("preheat", with(usual(), "base_", plain_steel(0.50, 0.80)))) ==
          std::vector<std::string>{method_b_name, table_c1_name, annex_name, seferian_name});
}

TEST_CASE("a metal no carbon equivalent can be formed of makes every method unusable, with the reason") {
    struct Row {
        Numbers numbers;
        std::string why;
    };
    const std::vector<Row> rows = {
        {{}, "the composition of the base metal is not known"},
        {{{"wall_m", 0.02}, {"deposit_C_pct", 0.1}}, "the composition of the base metal is not known"},
        {{{"base_C_pct", 0.5}}, "Mn of the base metal is not stated"},
        {{{"base_Mn_pct", 0.5}}, "C of the base metal is not stated"},
        {{{"base_Cr_pct", 0.5}}, "C and Mn of the base metal are not stated"},
        {{{"base_C_pct", 1.2}, {"base_Mn_pct", 12.5}}, "with 12.50 % Mn the base metal is no ferritic steel"},
        {{{"base_C_pct", 0.05}, {"base_Mn_pct", 1.5}, {"base_Cr_pct", 18}},
         "with 18.00 % Cr the base metal is no ferritic steel"},
        {{{"base_C_pct", 0.05}, {"base_Mn_pct", 1.5}, {"base_Ni_pct", 36}},
         "with 36.00 % Ni the base metal is no ferritic steel"},
        {{{"base_C_pct", 3.2}, {"base_Mn_pct", 0.7}}, "with 3.20 % C the base metal is no ferritic steel"},
        {{{"base_C_pct", 1.2}, {"base_Mn_pct", 0.7}}, "with 1.20 % C the base metal is no ferritic steel"},
        {{{"base_C_pct", 1.1}, {"base_Mn_pct", 8.0}},
         "with 8.00 % Mn and 1.10 % C the base metal is no ferritic steel"},
    };
    for (const Row& row : rows) {
        INFO(row.why);
        const Said said = ask_steel("preheat", row.numbers);
        CHECK(said.status == RF_DONE);
        CHECK(said.values.empty());
        CHECK(names_of(said) ==
              std::vector<std::string>{method_b_name, table_c1_name, annex_name, seferian_name});
        for (const Figure& method : said.methods) {
            CHECK((method.flags & ~RF_SECOND_OPINION) == RF_NOT_USABLE);
            CHECK(method.note == row.why);
        }
    }
}

TEST_CASE("metal that is no ferritic steel gets no advice, and other topics no answer") {
    for (const Said& said : {ask_steel("advice", {{"base_C_pct", 1.2}, {"base_Mn_pct", 12.5}}),
                             ask_steel("suits", usual()), ask_steel("", usual())}) {
        CHECK(said.status == RF_UNSUPPORTED);
        CHECK(said.fault.empty());
        CHECK(said.values.empty());
        CHECK(said.methods.empty());
        CHECK(said.advice.empty());
    }
}

TEST_CASE("a value that cannot be is refused by its name") {
    struct Row {
        std::string name;
        double value;
        std::string fault;
    };
    const std::vector<Row> rows = {
        {"wall_m", 0, "wall_m: 0 is not over 0; leave out what is not known"},
        {"wall_m", -0.02, "wall_m: -0.02 is not over 0; leave out what is not known"},
        {"combined_thickness_m", 0, "combined_thickness_m: 0 is not over 0; leave out what is not known"},
        {"heat_input_J_per_m", -1, "heat_input_J_per_m: -1 is under 0; leave out what is not known"},
        {"hydrogen_mL_per_100g", -1, "hydrogen_mL_per_100g: -1 is under 0; leave out what is not known"},
        {"yield_MPa", 0, "yield_MPa: 0 is not over 0; leave out what is not known"},
        {"tempering_K", 0, "tempering_K: 0 is not over 0; leave out what is not known"},
        {"base_C_pct", -0.2, "base_C_pct: -0.2 is no percentage; give 0 to 100"},
        {"deposit_Mn_pct", 101, "deposit_Mn_pct: 101 is no percentage; give 0 to 100"},
    };
    for (const Row& row : rows)
        for (const char* topic : {"preheat", "advice"}) {
            INFO(row.fault);
            const Said said = ask_steel(topic, with(usual(), row.name, row.value));
            CHECK(said.status == RF_REFUSED);
            CHECK(said.fault == row.fault);
            CHECK(said.methods.empty());
        }
}

TEST_CASE("names the rules do not know are skipped") {
    Numbers numbers = usual();
    numbers["moon_phase"] = -3;
    numbers["base__pct"] = -3;
    numbers["base_C"] = -3;
    numbers["base_pct"] = -3;
    const Said said = ask_steel("preheat", numbers);
    const Said plain = ask_steel("preheat", usual());
    REQUIRE(said.methods.size() == plain.methods.size());
    for (std::size_t i = 0; i < said.methods.size(); ++i)
        CHECK(said.methods[i].number == plain.methods[i].number);
}
