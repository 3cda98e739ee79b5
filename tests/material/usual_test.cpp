#include <catch2/catch.hpp>

#include <ringfill/material/family.hpp>
#include <ringfill/units/metric.hpp>

#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

const std::string bare_wire =
    R"("standard": "s", "form": "solid", "wire_density_kg_m3": [7850, "practice"],
"deposit_density_kg_m3": [7800, "practice"], "efficiency": [0.9, "practice"], "gases": ["M21"])";

std::string wire_family(const std::string& usual, const std::string& diameters) {
    return family_text(
        fmt::format("\"usual\": {{{}}}, \"fillers\": {{\"F\": {{{},\n\"diameters_mm\": {{{}}}}}}}", usual,
                    bare_wire, diameters));
}

const std::string all = R"("solid": {"bead_ratio": [3, "practice"], "stick_out_mm": [12, "practice"],
"diameters_mm": {"any": {"window": {"travel_mm_min": [100, 900, "practice"]}},
                 "1.2": {"window": {"current_A": [100, 350, "practice"]}}}})";

} // namespace

TEST_CASE("a filler takes over what is usual of its form, and of each diameter it has") {
    const Family family = family_of(
        wire_family(all, R"("1.0": {}, "1.2": {"window": {"travel_mm_min": [200, 400, "practice"]}})"));
    const Filler& filler = family.fillers.at(0);
    CHECK(filler.bead_ratio.value == 3);
    CHECK_THAT(mm(filler.stick_out.value), WithinAbs(12, 1e-9));
    REQUIRE(filler.sizes.size() == 2); // no diameter comes of what is usual
    CHECK_FALSE(filler.sizes[0].window.current);
    CHECK_THAT(filler.sizes[0].window.travel.value().value.second.value(), WithinAbs(0.015, 1e-12));
    CHECK(filler.sizes[1].window.current.value().value.second.value() == 350);
    CHECK_THAT(filler.sizes[1].window.travel.value().value.second.value(),
               WithinAbs(0.4 / 60, 1e-12)); // its own
}

TEST_CASE("a base metal takes over what is usual, and its own figures stand") {
    const Family family = family_of(family_text(fmt::format(
        R"("usual": {{"bases": {{"expansion_per_K": [18e-6, "practice"], "density_kg_m3": [1000, "practice"]}}}},
"bases": {{"A": {{{}}}, "B": {{{}, "expansion_per_K": [11e-6, "practice"]}}}})",
        base, base)));
    CHECK(family.bases.at(0).expansion_per_K.value().value == 18e-6);
    CHECK(family.bases.at(1).expansion_per_K.value().value == 11e-6);
    CHECK(family.bases.at(0).density.value.value() == 7850);
}

TEST_CASE(
    "what is usual of another form is not taken over, and what is wrong in it is told where it stands") {
    CHECK(refused(wire_family(R"("cored": {"bead_ratio": [3, "practice"], "stick_out_mm": [12, "practice"]})",
                              R"("1.0": {})"))
              .find("fillers.F.bead_ratio: is missing") != std::string::npos);
    CHECK(refused(wire_family(all + R"(, "wires": {})", R"("1.0": {})")) ==
          "alloy.json:3:78: usual.wires: is not a field of what is usual of a family; known here: bases, "
          "solid, "
          "cored, stick, rod\n");
}

TEST_CASE(
    "what is usual in a later file fills rows of that file, or is refused: it never changes those before") {
    const auto later = [](const std::string& members) {
        return refusal(Origin::table, [&] {
            read_family("alloy",
                        {parse("ours.json", wire_family(all, R"("1.0": {})"), Origin::table),
                         parse("mine.json", family_text(members), Origin::table)},
                        known_sources);
        });
    };
    const std::string lossy = R"("usual": {"solid": {"efficiency": [0.8, "practice"]}})";
    const std::string idle =
        "usual.solid.efficiency: fills no row of this file, and never those of another; write "
        "the rows that you change whole, or take it out";
    CHECK(later(lossy).find(idle) != std::string::npos);
    CHECK(
        later(lossy + R"(, "fillers": {"G": {)" + solid + R"(, "diameters_mm": {"1.0": {}}}})").find(idle) !=
        std::string::npos); // it has its own
    CHECK(
        later(
            R"("usual": {"solid": {"bead_ratio": [3, "practice"], "stick_out_mm": [12, "practice"]}}, "fillers": {"G": {)" +
            bare_wire + R"(, "diameters_mm": {"1.0": {}}}})") == "accepted");
}

TEST_CASE("a family knows which of its rows a later file replaces, with what is usual in them") {
    const Family family = read_family(
        "alloy",
        {parse("ours.json", wire_family(all, R"("1.0": {})"), Origin::table),
         parse("mine.json",
               wire_family(R"("solid": {"bead_ratio": [4, "practice"], "stick_out_mm": [12, "practice"]})",
                           R"("1.0": {})"),
               Origin::table)},
        known_sources);
    REQUIRE(family.replaced.size() == 1);
    CHECK(family.replaced[0].file == "mine.json");
    CHECK(family.replaced[0].family == "alloy");
    CHECK(family.replaced[0].table == "families/alloy.fillers");
    CHECK(family.replaced[0].row == "F");
    CHECK(family.replaced[0].fields == std::vector<std::string>{"diameters_mm", "bead_ratio"});
}

TEST_CASE("a grade is treated as another that stands before it") {
    const auto with = [](const std::string& named) {
        return family_text(fmt::format(
            R"("bases": {{"A": {{{}, "practice": {{"rows": [{{"minimum_degC": [150, "practice"]}}]}}}},
"B": {{{},
"practice_of": "{}"}}}})",
            base, base, named));
    };
    const Family family = family_of(with("A"));
    REQUIRE(family.bases.at(1).practice);
    CHECK(family.bases[1].practice->name == "tabulated practice for A, taken for B");
    CHECK_THAT(deg_c(family.bases[1].practice->rows.at(0).minimum.value), WithinAbs(150, 1e-9));
    CHECK(refused(with("C")) == "alloy.json:3:16: bases.B.practice_of: \"C\" is no grade with a practice "
                                "above this one; name one that "
                                "stands before it in the table, or write the rows under practice\n");
}

TEST_CASE("what a filler asks for itself, bears and wants told is read") {
    const Family family =
        family_of(filler_text(solid + R"(, "practice": {"rows": [{"practice_degC": [100, 250, "practice"]}]},
"interpass_max_degC": [260, "practice"],
"advice": [{"kind": "technique", "text": "Lay short beads.", "source": "practice"}])",
                              R"("1.2": {"windows": {"spray": {"spray_from_A": [220, "practice"]}}})"));
    const Filler& filler = family.fillers.at(0);
    CHECK_THAT(deg_c(filler.practice.value().rows.at(0).minimum.value), WithinAbs(250, 1e-9));
    CHECK(filler.practice->name == "what F asks for itself");
    CHECK_THAT(deg_c(filler.interpass_max.value().value), WithinAbs(260, 1e-9));
    REQUIRE(filler.advice.size() == 1);
    CHECK(filler.advice[0].text == "Lay short beads.");
    CHECK(filler.sizes.at(0).windows.at(0).second.spray_from.value().value.value() == 220);
    CHECK(refused(filler_text(solid + R"(,
"advice": [{"kind": "cost", "text": "t", "source": "nowhere"}])",
                              R"("1.2": {})")) ==
          "alloy.json:4:21: fillers.F.advice[0].kind: \"cost\" is not a word used here; known here: soak, "
          "slow_cooling, interpass, technique, post_heat\n"
          "alloy.json:4:52: fillers.F.advice[0].source: \"nowhere\" is not a known source; known here: "
          "practice\n");
}
