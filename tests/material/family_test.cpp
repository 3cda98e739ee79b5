#include <catch2/catch.hpp>

#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

TEST_CASE("a base metal is read with its sources") {
    const Family family = family_of(family_text(fmt::format(
        R"("bases": {{"B": {{{}, "composition_pct": {{"C": [0.4, "practice"], "Mn": [1, "practice"]}}}}}})",
        base)));
    CHECK(family.name == "alloy");
    CHECK(family.description == "d");
    REQUIRE(family.bases.size() == 1);
    CHECK(family.bases[0].name == "B");
    CHECK(family.bases[0].standard == "s");
    CHECK(family.bases[0].density.value.value() == 7850);
    CHECK(family.bases[0].density.source == "practice");
    REQUIRE(family.bases[0].composition.size() == 2);
    CHECK(family.bases[0].composition[1].first == "Mn");
    CHECK(family.bases[0].composition[1].second.value == 1);
}

TEST_CASE("a base metal is read with its structure, strengths and temperatures") {
    const std::string more = R"("yield_MPa": [690, "practice"], "tensile_MPa": [770, "practice"],
        "tempering_degC": [540, "practice"], "interpass_max_degC": [200, "practice"],
        "softens_over_degC": [225, "practice"],
        "advice": [{"kind": "technique", "text": "Cut the case off.", "source": "practice"}])";
    const Family family =
        family_of(family_text(fmt::format("\"bases\": {{\"B\": {{{0}, {1}}}, \"C\": {{{0}}}}}", base, more)));
    REQUIRE(family.bases.size() == 2);
    const Base& full = family.bases[0];
    CHECK(full.structure == "ferritic");
    CHECK(full.yield_MPa.value().value == 690);
    CHECK(full.tensile_MPa.value().value == 770);
    CHECK_THAT(full.tempering.value().value.value(), WithinRel(813.15, 1e-15));
    CHECK_THAT(full.interpass_max.value().value.value(), WithinRel(473.15, 1e-15));
    CHECK(full.interpass_max.value().source == "practice");
    CHECK_THAT(full.softens_over.value().value.value(), WithinRel(498.15, 1e-15));
    REQUIRE(full.advice.size() == 1);
    CHECK(full.advice[0].text == "Cut the case off.");
    const Base& bare = family.bases[1];
    CHECK_FALSE(bare.yield_MPa);
    CHECK_FALSE(bare.tensile_MPa);
    CHECK_FALSE(bare.tempering);
    CHECK_FALSE(bare.interpass_max);
    CHECK_FALSE(bare.softens_over);
    CHECK(bare.advice.empty());
    CHECK_FALSE(bare.practice);
    CHECK(bare.preheat_groups.empty());
    CHECK(bare.composition.empty());
}

TEST_CASE("a family has rules when its table says so") {
    CHECK_FALSE(family_of(family_text("\"bases\": {}")).has_rules);
    CHECK_FALSE(family_of(family_text("\"has_rules\": false")).has_rules);
    CHECK(family_of(family_text("\"has_rules\": true")).has_rules);
}

TEST_CASE("a filler's hydrogen is read; without a class there is none") {
    CHECK_FALSE(family_of(filler_text(solid, R"("1.0": {})")).fillers.at(0).hydrogen_ml_100g);
    const Family family = family_of(
        filler_text(fmt::format("{}, \"hydrogen_ml_100g\": [5, \"practice\"]", solid), R"("1.0": {})"));
    CHECK(family.fillers.at(0).hydrogen_ml_100g.value().value == 5);
}

TEST_CASE("a solid wire is read, its diameters rising and its figures in SI") {
    const Family family =
        family_of(filler_text(solid, R"("1.2": {}, "1.0": {"melting": {"a_mm_per_A_s": [0.3, "practice"],
        "b_per_A2_s": [5e-5, "practice"]}, "window": {"wire_feed_m_min": [3, 12, "practice"], "current_A": [70, 260, "practice"],
        "travel_mm_min": [120, 600, "practice"]}})"));
    REQUIRE(family.fillers.size() == 1);
    const Filler& filler = family.fillers[0];
    CHECK_FALSE(filler.cored());
    CHECK(filler.wire_density->value.value() == 7850);
    CHECK(filler.deposit_density.value.value() == 7800);
    CHECK(filler.gases == std::vector<std::string>{"M21"});
    CHECK_THAT(filler.stick_out.value.value(), WithinRel(0.012, 1e-15));
    REQUIRE(filler.sizes.size() == 2);
    const WireSize& size = filler.sizes[0];
    CHECK(size.name == "1.0");
    CHECK_THAT(size.diameter.value(), WithinRel(0.001, 1e-15));
    CHECK(size.melting->a.value == 0.3);
    CHECK(size.melting->b.value == 5e-5);
    CHECK_THAT(size.window.wire_feed->value.first.value(), WithinRel(0.05, 1e-15));
    CHECK_THAT(size.window.wire_feed->value.second.value(), WithinRel(0.2, 1e-15));
    CHECK(size.window.current->value.second.value() == 260);
    CHECK_THAT(size.window.travel->value.first.value(), WithinRel(0.002, 1e-15));
    CHECK_THAT(size.window.travel->value.second.value(), WithinRel(0.01, 1e-15));
    CHECK_FALSE(filler.sizes[1].melting);
}

TEST_CASE("a cored wire is read with its mass and its feed table") {
    const Family family =
        family_of(filler_text(cored, R"("1.2": {"linear_mass_kg_m": [0.0072, "practice"], "feed_table": [
        {"wire_feed_m_min": [6, "practice"], "current_A": [150, "practice"]},
        {"wire_feed_m_min": [12, "practice"], "current_A": [250, "practice"]}]})"));
    const WireSize& size = family.fillers.at(0).sizes.at(0);
    CHECK(family.fillers[0].cored());
    CHECK(family.fillers[0].gases.empty());
    CHECK(size.linear_mass->value.value() == 0.0072);
    REQUIRE(size.feed_table.size() == 2);
    CHECK_THAT(size.feed_table[1].feed.value.value(), WithinRel(0.2, 1e-15));
    CHECK(size.feed_table[1].current.value.value() == 250);
}

TEST_CASE("a later file corrects an entry and adds one") {
    const auto file = [](const std::string& name, const std::string& bases) {
        return parse(name, family_text(fmt::format("\"bases\": {{{}}}", bases)), Origin::table);
    };
    const std::string other =
        R"("standard": "t", "structure": "copper", "density_kg_m3": [7000, "practice"])";
    const Family family = read_family("alloy",
                                      {file("a", fmt::format("\"A\": {{{0}}}, \"B\": {{{0}}}", base)),
                                       file("b", fmt::format("\"B\": {{{0}}}, \"C\": {{{0}}}", other))},
                                      known_sources);
    REQUIRE(family.bases.size() == 3);
    CHECK(family.bases[0].standard == "s");
    CHECK(family.bases[1].name == "B");
    CHECK(family.bases[1].standard == "t");
    CHECK(family.bases[1].structure == "copper");
    CHECK(family.bases[1].density.value.value() == 7000);
    CHECK(family.bases[2].name == "C");
}
