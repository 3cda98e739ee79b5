#include <catch2/catch.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double kg_an_hour = 1 / factor::hour;

/// An electrode of 4 mm and 450 mm with a stub of 50 mm, by current or by a table; or a rod.
Filler filler(FillerForm form) {
    Filler one;
    one.name = "E";
    one.form = form;
    one.process = form == FillerForm::stick ? "manual_metal_arc" : "gas_tungsten_arc";
    one.wire_density = {in_si<Density>(7850), "own"};
    one.deposit_density = {in_si<Density>(7850), "own"};
    one.efficiency = {form == FillerForm::stick ? 1.1 : 0.95, "own"};
    WireSize size;
    size.diameter = mm(4);
    size.length = {mm(450), "l"};
    size.stub = {mm(50), "s"};
    if (form == FillerForm::stick) {
        size.mass = {in_si<Mass>(0.070), "m"};
        size.per_A = {0.010 * kg_an_hour, "k"};
    } else {
        size.range = {{in_si<MassFlow>(0.6 * kg_an_hour), in_si<MassFlow>(1.5 * kg_an_hour)}, "r"};
    }
    one.sizes = {size};
    return one;
}

Procedure procedure() {
    Procedure one;
    one.name = "main";
    one.path = "procedures.main";
    one.filler = "steel/E";
    one.wire = mm(4);
    one.current = in_si<Current>(160);
    return one;
}

std::vector<std::string> lines(const std::vector<Fault>& faults) {
    std::vector<std::string> found;
    for (const Fault& fault : faults)
        found.push_back(to_string(fault));
    return found;
}

using Lines = std::vector<std::string>;

} // namespace

// By hand: core (pi/4) 4^2 x 400 mm3 x 7.85e-6 kg/mm3 = 39.458 g, times 1.1 = 43.404 g.
TEST_CASE("an electrode lays its core without the stub times its efficiency") {
    std::vector<Fault> faults;
    const Deposition laid = deposition(procedure(), filler(FillerForm::stick), faults).value();
    CHECK_THAT(laid.piece.value().usable.value(), WithinAbs(0.043404, 0.5e-6));
    CHECK_THAT(laid.rate.value() * factor::hour, WithinRel(1.6, 1e-13)); // 0.010 kg/h for each of 160 A
    CHECK_THAT(laid.piece->mass.value(), WithinRel(0.070, 1e-14));
    CHECK(laid.wire_feed == Speed());
}

// ISO 2401 as restated in an electrode maker's technical sheet: deposit over core less stubs. Computed, no
// printed answer: five electrodes with 188 g of core, 24.7 g of stubs and 150 g laid have 150/163.3 = 91.9 %.
TEST_CASE("the efficiency of the core is that of ISO 2401") {
    PieceLaid piece;
    piece.length = mm(450);
    piece.stub = in_si<Length>(0.450 * 24.7 / 188);
    const auto core = in_si<LinearMass>(0.188 / 5 / 0.450);
    CHECK_THAT(5 * usable_mass(piece, core, 150 / 163.3).value(), WithinRel(0.150, 1e-12));
}

TEST_CASE("pieces are rounded up, but not for a rounding error") {
    PieceLaid piece;
    piece.usable = in_si<Mass>(0.1);
    CHECK(pieces_for(in_si<Mass>(0), piece) == 0);
    CHECK(pieces_for(in_si<Mass>(0.3), piece) == 3);
    CHECK(pieces_for(in_si<Mass>(0.1 * 3 * (1 + 1e-12)), piece) == 3);
    CHECK(pieces_for(in_si<Mass>(0.3001), piece) == 4);
    // a count that no whole number holds once came back negative
    CHECK(pieces_for(in_si<Mass>(0.1 * most_pieces), piece) == most_pieces);
    CHECK(pieces_for(in_si<Mass>(1e12), piece) == most_pieces + 1);
}

TEST_CASE("a table of rates is read between its points, and never beyond") {
    Filler tabulated = filler(FillerForm::stick);
    WireSize& size = tabulated.sizes[0];
    size.per_A.reset();
    size.rates = {{{in_si<Current>(120), "a"}, {in_si<MassFlow>(1.0 * kg_an_hour), "a"}},
                  {{in_si<Current>(160), "b"}, {in_si<MassFlow>(1.4 * kg_an_hour), "b"}}};
    Procedure at = procedure();
    at.current = in_si<Current>(130);
    std::vector<Fault> faults;
    CHECK_THAT(deposition(at, tabulated, faults).value().rate.value() * factor::hour, WithinRel(1.1, 1e-13));
    at.current = in_si<Current>(161);
    CHECK_FALSE(deposition(at, tabulated, faults));
    CHECK(
        lines(faults) ==
        Lines{
            R"(procedures.main.current: 161 A is outside the filler's table, 120 A to 160 A; choose a current in the table or write "deposition_rate" too)"});
    at.deposition_rate = in_si<MassFlow>(1.5 * kg_an_hour); // what the job says goes before the table
    faults.clear();
    CHECK_THAT(deposition(at, tabulated, faults).value().rate.value() * factor::hour, WithinRel(1.5, 1e-13));
}

TEST_CASE("a rod lays what the job says, else the low end of its range, else nothing is known") {
    std::vector<Fault> faults;
    Procedure by_hand = procedure();
    CHECK_THAT(deposition(by_hand, filler(FillerForm::rod), faults).value().rate.value() * factor::hour,
               WithinRel(0.6, 1e-13));
    by_hand.deposition_rate = in_si<MassFlow>(0.9 * kg_an_hour);
    CHECK_THAT(deposition(by_hand, filler(FillerForm::rod), faults).value().rate.value() * factor::hour,
               WithinRel(0.9, 1e-13));
    Filler bare = filler(FillerForm::rod);
    bare.sizes[0].range.reset();
    CHECK_FALSE(deposition(procedure(), bare, faults));
    CHECK(
        lines(faults) ==
        Lines{
            R"(procedures.main.deposition_rate: is missing, and the table has none of this rod; write "deposition_rate": "1.0 kg/h" from a trial weld)"});
}

TEST_CASE("an electrode without a current cannot be planned") {
    Procedure cold = procedure();
    cold.current.reset();
    std::vector<Fault> faults;
    CHECK_FALSE(deposition(cold, filler(FillerForm::stick), faults));
    CHECK(
        lines(faults) ==
        Lines{
            R"(procedures.main.current: is missing: it sets how fast an electrode melts; write "current": "130 A" or "deposition_rate": "1.2 kg/h")"});
}

TEST_CASE("what belongs to wire is refused with an electrode, each by its name") {
    Procedure odd = procedure();
    odd.wire_feed = m_min(8);
    odd.stick_out = mm(12);
    odd.spools = {in_si<Mass>(5)};
    odd.transfer = "short";
    odd.torch_path = TorchPath::helix;
    odd.gas_flow = in_si<VolumeFlow>(1e-4);
    const std::string of = " is of wire, and steel/E is an electrode; ";
    CHECK(
        lines(form_faults(odd, filler(FillerForm::stick))) ==
        Lines{
            "procedures.main.wire_feed:" + of + R"(take it out; "current" sets how fast it melts)",
            "procedures.main.stick_out:" + of + "take it out",
            "procedures.main.spools:" + of + "take them out",
            "procedures.main.transfer:" + of + "take it out",
            R"(procedures.main.path: is a helix, and an electrode is changed on the way; write "path": "ring")",
            "procedures.main.gas_flow: does not go with an electrode, which shields itself; take it out"});
}

TEST_CASE("an arc is refused with a torch, a rate with wire, and over 1 but with an electrode") {
    Filler brazed = filler(FillerForm::rod);
    brazed.process = "torch_brazing";
    CHECK(lines(form_faults(procedure(), brazed)) ==
          Lines{"procedures.main.current: does not go with a torch; take it out"});
    Filler wire;
    Procedure rated = procedure();
    rated.deposition_rate = in_si<MassFlow>(1 * kg_an_hour);
    rated.efficiency = 1.2;
    CHECK(
        lines(form_faults(rated, wire)) ==
        Lines{
            R"(procedures.main.deposition_rate: belongs to electrodes and rods; the feed sets the metal of wire; take it out and write "wire_feed")",
            "procedures.main.efficiency: is over 1, which only a covered electrode reaches; write at most "
            "1"});
    rated.deposition_rate.reset();
    CHECK(form_faults(rated, filler(FillerForm::stick)).empty());
    CHECK(form_faults(rated, filler(FillerForm::rod)).size() == 1);
}

// The inputs are in kg/min, the rate in kg/h: 60 minutes each.
TEST_CASE("the working of a rate is fed with the rate by the minute") {
    std::vector<Fault> faults;
    const Filler rod = filler(FillerForm::rod);
    const Working low = deposition(procedure(), rod, faults).value().piece.value().rate;
    REQUIRE(low.formula == "60*d_low");
    CHECK_THAT(low.inputs.at(0).values().at(0), WithinRel(0.6 / 60, 1e-12));
    Procedure told = procedure();
    told.deposition_rate = in_si<MassFlow>(1.2 * kg_an_hour);
    const Working own = deposition(told, rod, faults).value().piece.value().rate;
    REQUIRE(own.formula == "60*d");
    CHECK_THAT(own.inputs.at(0).values().at(0), WithinRel(1.2 / 60, 1e-12));
}
