#include <catch2/catch.hpp>

#include "document/fault_words.hpp"
#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

std::string group_text(const std::string& members) {
    return family_text(fmt::format("\"preheat_groups\": {{\"G\": {{\n{}}}}}", members));
}

/// A table of preheat with one row.
std::string row_text(const std::string& row) {
    return group_text(fmt::format("\"rows\": [{{{}}}]", row));
}

PreheatRow row_of(const std::string& row) {
    const Family family = family_of(row_text(row));
    REQUIRE(family.preheat_groups.size() == 1);
    REQUIRE(family.preheat_groups[0].rows.size() == 1);
    return family.preheat_groups[0].rows[0];
}

/// Far below what a thermometer tells, far above the rounding of a double [K].
constexpr double exact = 1e-9;

} // namespace

TEST_CASE("a row of preheat is read with its limits in SI") {
    const PreheatRow row = row_of(R"("up_to_mm": [38.1, "practice"], "carbon_up_to_pct": [0.3, "practice"],
        "tensile_up_to_MPa": [450, "practice"], "minimum_degC": [95, "practice"], "maximum_degC": [315, "practice"])");
    CHECK_THAT(row.up_to.value().value.value(), WithinAbs(0.0381, 1e-15));
    CHECK(row.carbon_up_to_pct.value().value == 0.3);
    CHECK(row.tensile_up_to_MPa.value().value == 450);
    CHECK_THAT(row.minimum.value.value(), WithinAbs(368.15, exact));
    CHECK(row.minimum.source == "practice");
    CHECK_THAT(row.maximum.value().value.value(), WithinAbs(588.15, exact));
}

TEST_CASE("a row without limits is open, and has no maximum unless it gives one") {
    const PreheatRow row = row_of(R"("minimum_degC": [95, "practice"])");
    CHECK_FALSE(row.up_to);
    CHECK_FALSE(row.carbon_up_to_pct);
    CHECK_FALSE(row.tensile_up_to_MPa);
    CHECK_FALSE(row.maximum);
}

TEST_CASE("of two prints of a minimum the higher counts, of a maximum the lower") {
    const auto minimum = [](const std::string& row) { return row_of(row).minimum.value.value(); };
    // 150 degF is 65.56 degC, 225 degF is 107.22 degC
    CHECK_THAT(minimum(R"("minimum_degF": [150, "practice"], "minimum_degC": [65, "practice"])"),
               WithinAbs(273.15 + 65 + 5.0 / 9, exact));
    CHECK_THAT(minimum(R"("minimum_degC": [110, "practice"], "minimum_degF": [225, "practice"])"),
               WithinAbs(383.15, exact));
    CHECK_THAT(minimum(R"("minimum_degF": [32, "practice"])"), WithinAbs(273.15, exact));
    const auto maximum = [&](const std::string& row) {
        return row_of(R"("minimum_degC": [10, "practice"], )" + row).maximum.value().value.value();
    };
    // 600 degF is 315.56 degC
    CHECK_THAT(maximum(R"("maximum_degF": [600, "practice"], "maximum_degC": [315, "practice"])"),
               WithinAbs(588.15, exact));
    CHECK_THAT(maximum(R"("maximum_degF": [600, "practice"], "maximum_degC": [316, "practice"])"),
               WithinAbs(273.15 + 315 + 5.0 / 9, exact));
}

TEST_CASE("the source told is that of the print that counts") {
    const auto source = [](const std::string& row) {
        const Bibliography known = {{"C", {"c", "-", "-", "standard", "read"}},
                                    {"F", {"f", "-", "-", "standard", "read"}}};
        return read_family("alloy", {parse("alloy.json", row_text(row), Origin::table)}, known)
            .preheat_groups.at(0)
            .rows.at(0)
            .minimum.source;
    };
    CHECK(source(R"("minimum_degF": [150, "F"], "minimum_degC": [65, "C"])") == "F");
    CHECK(source(R"("minimum_degF": [225, "F"], "minimum_degC": [110, "C"])") == "C");
}

TEST_CASE("of a range of practice the upper end counts") {
    CHECK_THAT(row_of(R"("practice_degC": [150, 200, "practice"])").minimum.value.value(),
               WithinAbs(473.15, exact));
    CHECK_THAT(row_of(R"("practice_degC": [150, 200, "practice"], "minimum_degC": [210, "practice"])")
                   .minimum.value.value(),
               WithinAbs(483.15, exact));
}

TEST_CASE("the lower end of a range is kept where its upper end counts") {
    CHECK_THAT(row_of(R"("practice_degC": [150, 200, "practice"])").range_from.value().value(),
               WithinAbs(423.15, exact));
    CHECK_FALSE(row_of(R"("minimum_degC": [150, "practice"])").range_from);
    CHECK_FALSE(
        row_of(R"("practice_degC": [150, 200, "practice"], "minimum_degC": [210, "practice"])").range_from);
}

TEST_CASE("a table of preheat keeps the order of its rows and the hydrogen it was made for") {
    const Family family = family_of(group_text(R"("hydrogen_up_to_ml_100g": [8, "practice"], "rows": [
        {"up_to_mm": [13, "practice"], "minimum_degC": [150, "practice"]}, {"minimum_degC": [20, "practice"]}])"));
    const PreheatGroup& group = family.preheat_groups.at(0);
    CHECK(group.name == "G");
    CHECK(group.hydrogen_up_to.value().value == 8);
    CHECK_FALSE(group.hydrogen_over);
    REQUIRE(group.rows.size() == 2);
    CHECK(group.rows[0].up_to);
    CHECK_FALSE(group.rows[1].up_to);
    const Family other = family_of(group_text(
        R"("hydrogen_over_ml_100g": [16, "practice"], "rows": [{"minimum_degC": [20, "practice"]}])"));
    CHECK(other.preheat_groups.at(0).hydrogen_over.value().value == 16);
    CHECK_FALSE(other.preheat_groups.at(0).hydrogen_up_to);
}

TEST_CASE("a base metal has its practice row and the tables that list it") {
    const Family family = family_of(family_text(fmt::format(
        R"("preheat_groups": {{"G": {{"rows": [{{"minimum_degC": [20, "practice"]}}]}}}},
        "bases": {{"B": {{{}, "preheat_groups": ["G"], "practice": {{"rows": [{{"practice_degC": [20, 95, "practice"]}}]}}}}}})",
        base)));
    const Base& one = family.bases.at(0);
    CHECK(one.preheat_groups == std::vector<std::string>{"G"});
    CHECK(one.practice.value().name == "tabulated practice for B");
    CHECK_THAT(one.practice.value().rows.at(0).minimum.value.value(), WithinAbs(368.15, exact));
}

TEST_CASE("a later file replaces a table of preheat whole") {
    const auto file = [](const std::string& name, const std::string& rows) {
        return parse(name, group_text(fmt::format("\"rows\": [{}]", rows)), Origin::table);
    };
    const Family family =
        read_family("alloy",
                    {file("a", R"({"minimum_degC": [20, "practice"]}, {"minimum_degC": [95, "practice"]})"),
                     file("b", R"({"minimum_degC": [150, "practice"]})")},
                    known_sources);
    REQUIRE(family.preheat_groups.size() == 1);
    REQUIRE(family.preheat_groups[0].rows.size() == 1);
    CHECK_THAT(family.preheat_groups[0].rows[0].minimum.value.value(), WithinAbs(423.15, exact));
}

TEST_CASE("a row without a figure, and one out of range, is refused") {
    CHECK(refused(row_text(R"("up_to_mm": [25, "practice"])")) ==
          "alloy.json:2:10: preheat_groups.G.rows[0]: has no figure; write \"minimum_degC\", "
          "\"minimum_degF\" or \"practice_degC\"\n");
    CHECK(refused(row_text(R"("maximum_degC": [150, "practice"])")) ==
          "alloy.json:2:10: preheat_groups.G.rows[0]: has no figure; write \"minimum_degC\", "
          "\"minimum_degF\" or \"practice_degC\"\n");
    CHECK(refused(row_text(R"("minimum_degC": [1500, "practice"])")) ==
          "alloy.json:2:28: preheat_groups.G.rows[0].minimum_degC: 1500" + out_of_range("from -60 to 700") +
              "\n");
    CHECK(refused(row_text(R"("practice_degC": [200, 150, "practice"])")) ==
          "alloy.json:2:28: preheat_groups.G.rows[0].practice_degC:" + swapped_ends + "\n");
    CHECK(refused(row_text(R"("minimum_degC": 95)")) ==
          "alloy.json:2:27: preheat_groups.G.rows[0].minimum_degC: 95" + no_source + "\n");
    CHECK(refused(row_text(R"("minimum_degC": [95, "practise"])")) ==
          "alloy.json:2:32: preheat_groups.G.rows[0].minimum_degC: \"practise\" is not a known source; did "
          "you mean \"practice\"?\n");
    CHECK(refused(row_text(R"("upto_mm": [25, "practice"], "minimum_degC": [95, "practice"])")) ==
          "alloy.json:2:11: preheat_groups.G.rows[0].upto_mm: is not a field of a row of preheat; did you "
          "mean \"up_to_mm\"?\n");
}

TEST_CASE("a table of preheat without rows is refused") {
    CHECK(refused(group_text("")) ==
          "alloy.json:1:96: preheat_groups.G.rows: is missing; write \"rows\": [{ \"practice_degC\": [150, "
          "200, \"practice\"] }]\n");
    CHECK(refused(group_text("\"rows\": []")) ==
          "alloy.json:2:9: preheat_groups.G.rows: has 0 of them; give 1 to 50\n");
}

TEST_CASE("a base metal that names an unknown table of preheat is refused") {
    const auto lists = [](const std::string& names) {
        return refused(family_text(
            fmt::format("\"preheat_groups\": {{\"D1.1 B\": {{\"rows\": [{{\"minimum_degC\": [20, "
                        "\"practice\"]}}]}}}},\n\"bases\": {{\"B\": {{{},\n\"preheat_groups\": [{}]}}}}",
                        base, names)));
    };
    CHECK(lists("\"D1.1 B\"") == "accepted\n");
    CHECK(lists("\"D1.1 C\"") ==
          "alloy.json:3:20: bases.B.preheat_groups[0]: \"D1.1 C\" is not a table of preheat of this family; "
          "did you mean \"D1.1 B\"?\n");
    CHECK(lists("7") ==
          "alloy.json:3:20: bases.B.preheat_groups[0]: 7 is not the name of a table of preheat; write one of "
          "the family's preheat_groups in quotes\n");
    CHECK(lists("") == "alloy.json:3:19: bases.B.preheat_groups: has 0 of them; give 1 to 20\n"); // told once
}

TEST_CASE("a table of preheat may be for some fillers of its family, and refuses a name that is none") {
    const auto with_fillers = [](const std::string& fillers, const std::string& where) {
        return family_text(fmt::format("\"fillers\": {{\"F\": {{{}, \"diameters_mm\": {{\"1.0\": "
                                       "{{}}}}}}}},\n\"{}\": {{{}\"rows\": [{{\"minimum_degC\": [20, "
                                       "\"practice\"]}}]}}}}",
                                       solid, where, fillers));
    };
    const std::string group = "preheat_groups\": {\"G";
    CHECK(family_of(with_fillers("\"fillers\": [\"F\"], ", group)).preheat_groups.at(0).fillers ==
          std::vector<std::string>{"alloy/F"});
    CHECK(family_of(with_fillers("", group)).preheat_groups.at(0).fillers.empty());
    CHECK(refused(with_fillers("\"fillers\": [\"FF\"], ", group)) ==
          "alloy.json:4:38: preheat_groups.G.fillers[0]: \"FF\" is not a filler of this family; did you mean "
          "\"F\"?\n");
    const std::string practice = "bases\": {\"B\": {" + std::string(base) + ", \"practice";
    CHECK(refused(with_fillers("\"fillers\": [\"F\"], ", practice) + "}")
              .find("is not for practice, which holds whatever the filler; write it under preheat_groups") !=
          std::string::npos);
}
