#include <catch2/catch.hpp>

#include "material/family_text.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinRel;

namespace {

const std::string stick =
    R"("standard": "s", "form": "stick", "wire_density_kg_m3": [7850, "practice"],
"deposit_density_kg_m3": [7800, "practice"], "efficiency": [1.1, "practice"], "bead_ratio": [3, "practice"], "gases": [])";
const std::string rod =
    R"("standard": "s", "form": "rod", "wire_density_kg_m3": [7850, "practice"],
"deposit_density_kg_m3": [7800, "practice"], "efficiency": [0.95, "practice"], "bead_ratio": [3, "practice"], "gases": ["I1"])";

std::string piece(const std::string& more) {
    return R"("3.2": {"length_mm": [350, "practice"], "stub_mm": [50, "practice"])" + more + "}";
}

const std::string stick_rate = R"(, "mass_g": [36, "practice"], "rate_kg_h_A": [0.009, "practice"])";

Filler filler_of(const std::string& members, const std::string& diameters) {
    return family_of(filler_text(members, diameters)).fillers.at(0);
}

/// The first fault without its place.
std::string reason(const std::string& members, const std::string& diameters) {
    const std::string text = refused(filler_text(members, diameters));
    const std::size_t begin = text.find("fillers.F");
    return begin == std::string::npos ? text : text.substr(begin, text.find('\n') - begin);
}

} // namespace

TEST_CASE("an electrode is read with its length, stub, mass and rate") {
    const Filler filler = filler_of(stick, piece(stick_rate));
    CHECK(filler.form == FillerForm::stick);
    CHECK(filler.process == "manual_metal_arc");
    CHECK_FALSE(filler.efficiency_of_covered);
    const WireSize& one = filler.sizes.at(0);
    CHECK_THAT(one.length.value.value(), WithinRel(0.350, 1e-14));
    CHECK_THAT(one.stub.value.value(), WithinRel(0.050, 1e-14));
    CHECK_THAT(one.mass.value().value.value(), WithinRel(0.036, 1e-14));
    CHECK_THAT(one.per_A.value().value, WithinRel(0.009 / 3600, 1e-14));
}

TEST_CASE("a rod is read with its range of rates, and may leave its mass to its section") {
    const Filler filler = filler_of(rod, piece(R"(, "rate_kg_h": [0.5, 1.5, "practice"])"));
    CHECK(filler.process == "gas_tungsten_arc");
    CHECK_FALSE(filler.sizes.at(0).mass);
    CHECK_THAT(filler.sizes.at(0).range.value().value.second.value(), WithinRel(1.5 / 3600, 1e-14));
    CHECK(filler_of(rod + R"(, "process": "torch_brazing")", piece("")).process == "torch_brazing");
}

TEST_CASE("windows stand by transfer, and cored wire by whether it has gas") {
    const Filler wire = filler_of(solid, R"("1.2": {"window": {"current_A": [100, 350, "practice"]},
        "windows": {"spray": {"current_A": [220, 350, "practice"], "voltage_V": [24, 30, "practice"]}}})");
    REQUIRE(wire.sizes.at(0).windows.size() == 1);
    CHECK(wire.sizes[0].windows[0].first == "spray");
    CHECK(wire.sizes[0].windows[0].second.voltage.value().value.first.value() == 24);
    CHECK(wire.process == "gas_metal_arc");
    CHECK(filler_of(cored, R"("1.2": {"linear_mass_kg_m": [0.0072, "practice"]})").process ==
          "self_shielded_arc");
}

// By hand: a core of 3.2 mm and 350 mm of 7850 kg/m3 holds 22.10 g; 0.65 of 36 g are 23.4 g, of 33 g 21.45 g.
TEST_CASE("an electrode that lays more than its core holds says that its covering holds metal") {
    std::string covered = stick;
    covered.replace(covered.find("[1.1,"), 5, "[0.65,");
    covered += R"(, "efficiency_of": "electrode")";
    const std::string light = R"(, "mass_g": [33, "practice"], "rate_kg_h_A": [0.009, "practice"])";
    CHECK(reason(covered, piece(stick_rate)) ==
          R"(fillers.F.diameters_mm: lets 3.2 mm lay 23.4 g of a core of 22.1 g; weigh the electrode, or )"
          R"(write "covering": "iron_powder" if it holds metal)");
    CHECK(filler_of(covered, piece(light)).efficiency.value == 0.65);
    CHECK(filler_of(covered + R"(, "covering": "iron_powder")", piece(stick_rate)).iron_powder);
    CHECK(reason(rod + R"(, "covering": "iron_powder")", piece("")) ==
          "fillers.F.covering: \"iron_powder\" belongs to electrodes; take it out");
}

TEST_CASE("what a form needs is missed by name") {
    CHECK(reason(stick, piece("")) == "fillers.F.diameters_mm.3.2.mass_g: is missing; an electrode needs it");
    CHECK(
        reason(
            stick,
            R"("3.2": {"mass_g": [36, "practice"], "rate_kg_h_A": [0.009, "practice"], "stub_mm": [50, "practice"]})") ==
        "fillers.F.diameters_mm.3.2.length_mm: is missing; an electrode needs it");
    CHECK(reason(stick, piece(R"(, "mass_g": [36, "practice"])")) ==
          R"(fillers.F.diameters_mm.3.2: gives no rate; write either "rate_kg_h_A" or "rate_table")");
    CHECK(reason(stick, piece(stick_rate + R"(, "rate_table": [
        {"current_A": [100, "practice"], "rate_kg_h": [1, "practice"]}, {"current_A": [140, "practice"], "rate_kg_h": [1.2, "practice"]}])")) ==
          R"(fillers.F.diameters_mm.3.2: gives its rate twice; write either "rate_kg_h_A" or "rate_table")");
    CHECK(reason(rod, R"("3.2": {"length_mm": [350, "practice"]})") ==
          "fillers.F.diameters_mm.3.2.stub_mm: is missing; a rod needs it");
}

TEST_CASE("rods and electrodes without the density of what they are cut from are refused") {
    const auto without_density = [](std::string members) {
        const std::string density = R"("wire_density_kg_m3": [7850, "practice"],)";
        return members.replace(members.find(density), density.size(), "");
    };
    CHECK(reason(without_density(rod), piece("")) ==
          "fillers.F.wire_density_kg_m3: is missing; a rod needs the density of its metal");
    CHECK(reason(without_density(stick), piece(stick_rate)) ==
          "fillers.F.wire_density_kg_m3: is missing; an electrode needs the density of its core");
}

TEST_CASE("one diameter written in two ways is refused") {
    CHECK(reason(solid, R"("1.2": {}, "1.20": {})") ==
          "fillers.F.diameters_mm: gives 1.20 mm twice; keep one of the two");
}

TEST_CASE("what does not go with a form is refused by name") {
    CHECK(reason(solid, R"("1.0": {"length_mm": [350, "practice"]})") ==
          "fillers.F.diameters_mm.1.0.length_mm: does not go with wire off a spool; take it out");
    CHECK(
        reason(stick,
               piece(stick_rate +
                     R"(, "melting": {"a_mm_per_A_s": [0.3, "practice"], "b_per_A2_s": [0, "practice"]})")) ==
        "fillers.F.diameters_mm.3.2.melting: does not go with an electrode; take it out");
    CHECK(reason(stick + R"(, "stick_out_mm": [12, "practice"])", piece(stick_rate)) ==
          "fillers.F.stick_out_mm: belongs to wire, not to an electrode or rod; take it out");
    std::string in_gas = stick;
    in_gas.replace(in_gas.find(R"("gases": [])"), 11, R"("gases": ["M21"])");
    CHECK(reason(in_gas, piece(stick_rate)) ==
          R"(fillers.F.gases: belong to wires and rods, not to an electrode; write "gases": [])");
    CHECK(reason(rod + R"(, "efficiency_of": "core")", piece("")) ==
          "fillers.F.efficiency_of: \"core\" belongs to electrodes; take it out");
}

TEST_CASE("shares, stubs and rates that cannot be are refused") {
    std::string over = solid;
    over.replace(over.find("[0.9,"), 5, "[1.1,");
    CHECK(reason(over, R"("1.0": {})") ==
          "fillers.F.efficiency: is over 1; only a covered electrode lays more than its core");
    CHECK(reason(solid + R"(, "efficiency_range": [0.92, 0.95, "practice"])", R"("1.0": {})") ==
          "fillers.F.efficiency: lies outside its range; widen the range or correct the figure");
    CHECK(reason(stick, R"("3.2": {"length_mm": [350, "practice"], "stub_mm": [350, "practice"])" +
                            stick_rate + "}") ==
          "fillers.F.diameters_mm.3.2.stub_mm: is as long as the whole; write the piece that is thrown away");
    CHECK(reason(stick, piece(R"(, "mass_g": [36, "practice"], "rate_table": [
        {"current_A": [140, "practice"], "rate_kg_h": [1, "practice"]}, {"current_A": [130, "practice"], "rate_kg_h": [1.2, "practice"]}])")) ==
          "fillers.F.diameters_mm.3.2.rate_table[1]: does not rise over the point before it; list the points "
          "with current and rate rising");
}
