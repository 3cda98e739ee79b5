#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>

#include <fmt/format.h>

#include <ringfill/document/parse.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/sticks.hpp>
#include <ringfill/units/metric.hpp>

#include "document/fault_words.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

const Bibliography known = {{"practice", {"common practice", "-", "-", "practice", "memory"}}};

std::string file_of(const std::string& sticks) {
    return fmt::format("{{\"format\": \"ringfill-sticks/1\", \"description\": \"d\", \"sticks\": {{\n{}}}}}",
                       sticks);
}

std::vector<Stick> sticks_of(const std::vector<std::string>& texts) {
    std::vector<Document> files;
    for (const std::string& text : texts)
        files.push_back(parse("sticks.json", file_of(text), Origin::table));
    return read_sticks(files, known);
}

/// What a table is refused with, a line a fault, without the excerpts; "accepted" when it loads.
std::string refused(const std::string& text) {
    std::istringstream whole(
        refusal(Origin::table, [&] { read_sticks({parse("t.json", text, Origin::table)}, known); }));
    std::string lines;
    for (std::string line; std::getline(whole, line);)
        if (!line.starts_with("    "))
            lines += line + '\n';
    return lines;
}

std::string stick(const std::string& members) {
    return refused(file_of(fmt::format("\"a\": {{{}}}", members)));
}

constexpr double exact = 1e-9; // K, the rounding of a double

} // namespace

TEST_CASE("sticks are read in their own scale and stand rising in their rating") {
    const auto sticks = sticks_of({R"("b": {"units": "inch", "rating_degF": [225, "practice"]},
        "c": {"units": "mm", "rating_degC": [110, "practice"], "stocked": false},
        "a": {"units": "mm", "rating_degC": [50, "practice"]})"});
    REQUIRE(sticks.size() == 3);
    CHECK(sticks[0].name == "a");
    CHECK(sticks[0].units == UnitSystem::metric);
    CHECK_THAT(sticks[0].rating.value.value(), WithinAbs(323.15, exact));
    CHECK(sticks[0].rating.source == "practice");
    CHECK(sticks[0].stocked);
    CHECK(sticks[1].name == "b"); // 107.2 degC
    CHECK(sticks[1].units == UnitSystem::inch);
    CHECK_THAT(sticks[1].rating.value.value(), WithinAbs(273.15 + 193 * 5.0 / 9, exact));
    CHECK(sticks[2].name == "c");
    CHECK_FALSE(sticks[2].stocked);
}

TEST_CASE("a later file corrects a stick, adds one, and all stand rising again") {
    const auto sticks = sticks_of({R"("a": {"units": "mm", "rating_degC": [50, "practice"]},
        "b": {"units": "mm", "rating_degC": [110, "practice"]})",
                                   R"("a": {"units": "mm", "rating_degC": [150, "practice"]},
        "c": {"units": "mm", "rating_degC": [120, "practice"]})"});
    REQUIRE(sticks.size() == 3);
    CHECK(sticks[0].name == "b");
    CHECK(sticks[1].name == "c");
    CHECK(sticks[2].name == "a");
    CHECK_THAT(deg_c(sticks[2].rating.value), WithinAbs(150, exact));
}

TEST_CASE("a stick has one rating") {
    CHECK(stick(R"("units": "mm", "rating_degC": [110, "practice"])") == "accepted\n");
    CHECK(stick(R"("units": "mm")") ==
          "t.json:2:6: sticks.a: has no rating; write \"rating_degC\" or \"rating_degF\"\n");
    CHECK(stick(R"("units": "mm", "rating_degC": [110, "practice"], "rating_degF": [225, "practice"])") ==
          "t.json:2:6: sticks.a: has two ratings; keep the one that is printed on it, \"rating_degC\" or "
          "\"rating_degF\"\n");
}

TEST_CASE("a rating without a source, out of range or of no scale is refused") {
    CHECK(stick(R"("units": "mm", "rating_degC": 110)") ==
          "t.json:2:37: sticks.a.rating_degC: 110" + no_source + "\n");
    CHECK(stick(R"("units": "mm", "rating_degC": [1100, "practice"])") ==
          "t.json:2:38: sticks.a.rating_degC: 1100" + out_of_range("from 0 to 700") + "\n");
    CHECK(stick(R"("units": "inch", "rating_degF": [0, "practice"])") ==
          "t.json:2:40: sticks.a.rating_degF: 0" + out_of_range("from 32 to 1292") + "\n");
    CHECK(stick(R"("unit": "mm", "rating_degC": [110, "practice"])") ==
          "t.json:2:6: sticks.a.units: is missing; write \"units\": \"mm\"\n"
          "t.json:2:7: sticks.a.unit: is not a field of a temperature stick; did you mean \"units\"?\n");
}

TEST_CASE("the table of sticks has its signature and its sticks") {
    CHECK(refused(R"({"format": "ringfill-sticks/2", "description": "d", "sticks": {}})") ==
          "t.json:1:12: format: \"ringfill-sticks/2\" is not a word used here; did you mean "
          "\"ringfill-sticks/1\"?\n");
    CHECK(refused(R"({"format": "ringfill-sticks/1", "description": "d"})") ==
          "t.json:1:1: sticks: is missing; write \"sticks\": { ... }\n");
}

TEST_CASE("the product's sticks rise in even steps of both scales") {
    const Shelf own{{RINGFILL_TABLES}};
    const auto sticks =
        read_sticks(table_files(own, "sticks.json"), read_sources(table_files(own, "sources.json")));
    CHECK(std::is_sorted(sticks.begin(), sticks.end(),
                         [](const Stick& a, const Stick& b) { return a.rating.value < b.rating.value; }));
    std::vector<double> celsius_ratings;
    std::vector<double> fahrenheit_ratings;
    for (const Stick& one : sticks) {
        CHECK(one.stocked);
        const double degrees = deg_c(one.rating.value);
        if (one.units == UnitSystem::metric)
            celsius_ratings.push_back(degrees);
        else
            fahrenheit_ratings.push_back(degrees * 9 / 5 + 32);
    }
    REQUIRE(celsius_ratings.size() == 36);
    REQUIRE(fahrenheit_ratings.size() == 26);
    for (std::size_t i = 0; i < celsius_ratings.size(); ++i)
        CHECK_THAT(celsius_ratings[i], WithinAbs(50 + 10 * static_cast<double>(i), exact));
    for (std::size_t i = 0; i < fahrenheit_ratings.size(); ++i)
        CHECK_THAT(fahrenheit_ratings[i], WithinAbs(125 + 25 * static_cast<double>(i), exact));
}

TEST_CASE("a number in the name of a stick is its rating, in the scale that it names") {
    const auto named = [](const std::string& name, const std::string& rating) {
        return refused(R"({"format": "ringfill-sticks/1", "description": "d", "sticks": {")" + name +
                       R"(": {"units": "mm", )" + rating + "}}}");
    };
    const std::string celsius = R"("rating_degC": [150, "practice"])";
    const std::string fahrenheit = R"("rating_degF": [302, "practice"])";
    for (const char* name : {"150 °C stick", "stick 150", "150C", "302 °F / 150 °C", "300 K-line 150 °C",
                             "red", "150.0 °C stick", "T150-2 stick"}) {
        CAPTURE(name);
        CHECK(named(name, celsius) == "accepted\n");
    }
    CHECK(named("150 °C stick", fahrenheit) == "accepted\n");
    for (const char* name :
         {"260 °C stick", "stick 260", "302 °F / 160 °C", "150 °F stick", "149 °C stick"}) {
        CAPTURE(name);
        CHECK(named(name, celsius)
                  .find("rating_degC: is not the number in the name of the stick; write the rating that "
                        "stands on it, "
                        "in both") != std::string::npos);
    }
}
