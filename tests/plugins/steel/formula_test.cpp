#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <set>

#include "asking.hpp"
#include "working/formula.hpp"

// Every formula is evaluated with its own inputs by a judge that knows nothing of the rules.

using namespace ringfill::testing;
using ringfill::steel::Figure;

namespace {

double evaluated(const Figure& figure) {
    Symbols symbols;
    for (const auto& input : figure.inputs)
        symbols[input.symbol] = {input.value};
    return evaluate(figure.formula, symbols);
}

const std::vector<Percent> metals = {plain_steel(0.20, 1.20),
                                     plain_steel(0.50, 0.80),
                                     plain_steel(0.06, 0.60),
                                     {{"C", 0.23}, {"Mn", 1.60}},
                                     {{"C", 0.43}, {"Si", 0.35}, {"Mn", 1.00}, {"Cr", 1.10}, {"Mo", 0.25}},
                                     {{"C", 0.16},
                                      {"Si", 0.30},
                                      {"Mn", 1.30},
                                      {"Cr", 0.50},
                                      {"Ni", 0.50},
                                      {"Mo", 0.30},
                                      {"V", 0.03},
                                      {"Cu", 0.2},
                                      {"Nb", 0.02},
                                      {"B", 0.002}}};

/// Each metal in walls and with hydrogen within and outside the ranges, and with each number left out.
std::vector<Numbers> situations() {
    std::vector<Numbers> all;
    for (const Percent& metal : metals)
        for (const double wall : {0.005, 0.025, 0.120})
            for (const double hydrogen : {0.5, 4.0, 25.0})
                for (const double heat_input : {0.3e6, 1.3e6, 5e6}) {
                    Numbers numbers = without(without(usual(), "base_Si_pct"), "base_Cr_pct");
                    for (const auto& [element, percent] : plain_steel(0, 0))
                        numbers.erase("base_" + element + "_pct");
                    numbers = with(numbers, "base_", metal);
                    numbers["wall_m"] = wall;
                    numbers["hydrogen_mL_per_100g"] = hydrogen;
                    numbers["heat_input_J_per_m"] = heat_input;
                    numbers["tempering_K"] = 500 + 1000 * wall;
                    all.push_back(numbers);
                    all.push_back(with(numbers, "hydrogen_is_measured", 1));
                    for (const char* unknown :
                         {"wall_m", "hydrogen_mL_per_100g", "heat_input_J_per_m", "yield_MPa", "tempering_K"})
                        all.push_back(without(numbers, unknown));
                }
    return all;
}

bool has_figure(const Figure& method) {
    return (method.flags & (RF_NONE_NEEDED | RF_NO_FIGURE | RF_NOT_USABLE)) == 0;
}

} // namespace

TEST_CASE("the formula of every method gives its minimum in degrees Celsius") {
    std::set<std::string> judged;
    for (const Numbers& numbers : situations())
        for (const Figure& method : ask_steel("preheat", numbers).methods) {
            if (!has_figure(method))
                continue;
            INFO(method.name << ": " << method.formula);
            CHECK(std::fabs(evaluated(method) - degC(method)) <= 1e-9);
            judged.insert(method.name);
        }
    CHECK(judged == std::set<std::string>{method_b_name, annex_name, seferian_name});
}

TEST_CASE("the formula of every value gives it in the unit of its name") {
    std::set<std::string> judged;
    for (const Numbers& numbers : situations())
        for (const char* topic : {"preheat", "advice"})
            for (const Figure& value : ask_steel(topic, numbers).values) {
                INFO(value.name << ": " << value.formula);
                CHECK(std::fabs(evaluated(value) - value.number) <= 1e-9);
                judged.insert(value.name);
            }
    CHECK(judged ==
          std::set<std::string>{"CE_IIW_pct", "Pcm_pct", "CET_pct", "CEN_pct", "crack_test_wait_s"});
}

// What the interface promises of every figure: abi.h.
TEST_CASE("every figure has a name, a known source, a finite number and clean text") {
    const std::set<std::string> sources = {"EN1011-2-B", "EN1011-2-C1", "D1.1-annex", "Seferian",
                                           "IIW-CE",     "Ito-Bessyo",  "Yurioka",    "SEW088",
                                           "ISO13916",   "D10.10",      "practice"};
    const auto clean = [](const std::string& text) {
        return text.size() <= RF_TEXT_LONGEST &&
               std::ranges::none_of(text, [](char one) { return one >= 0 && one < ' '; });
    };
    for (const Numbers& numbers : situations())
        for (const char* topic : {"preheat", "advice"}) {
            const Said said = ask_steel(topic, numbers);
            CHECK(said.status == RF_DONE);
            std::set<std::string> names;
            std::vector<Figure> figures = said.values;
            figures.insert(figures.end(), said.methods.begin(), said.methods.end());
            for (const Figure& figure : figures) {
                INFO(figure.name << ": " << figure.note);
                CHECK(names.insert(figure.name).second);
                CHECK(sources.contains(figure.source));
                CHECK(std::isfinite(figure.number));
                CHECK(clean(figure.note));
                if (has_figure(figure) && figure.name.find("_pct") == std::string::npos)
                    CHECK((figure.number >= 200 || figure.name == "cooling_max_K_per_h"));
            }
            for (const SaidAdvice& one : said.advice) {
                CHECK(sources.contains(one.source));
                CHECK(clean(one.text));
            }
        }
}

TEST_CASE("the same question gives the same answer to the bit") {
    for (const Numbers& numbers : situations()) {
        const Said first = ask_steel("preheat", numbers);
        const Said second = ask_steel("preheat", numbers);
        REQUIRE(first.methods.size() == second.methods.size());
        for (std::size_t i = 0; i < first.methods.size(); ++i) {
            CHECK(first.methods[i].number == second.methods[i].number);
            CHECK(first.methods[i].note == second.methods[i].note);
        }
    }
}
