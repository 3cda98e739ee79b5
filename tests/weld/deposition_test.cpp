#include <catch2/catch.hpp>

#include "weld/sample.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// Coefficients of 1.2 mm plain carbon steel wire: Norrish, Advanced Welding Processes, 2006, chapter on gas
/// metal arc welding; from memory.
const MeltingCurve norrish{{0.300, "Norrish"}, {5.0e-5, "Norrish"}};

Current amps(double value) {
    return in_si<Current>(value);
}

double as_m_min(Speed speed) {
    return speed.value() * factor::minute;
}

/// A solid filler in two diameters, the larger with a melting curve.
Filler solid() {
    Filler filler;
    filler.name = "X1";
    filler.wire_density = {in_si<Density>(7800), "own"};
    filler.deposit_density = {in_si<Density>(7850), "own"};
    filler.efficiency = {0.92, "own"};
    filler.efficiency_by_gas = {{"C1", {0.90, "own"}}};
    filler.stick_out = {mm(15), "own"};
    WireSize thin;
    thin.diameter = mm(0.9);
    WireSize thick;
    thick.diameter = mm(1.2);
    thick.melting = norrish;
    filler.sizes = {thin, thick};
    return filler;
}

Procedure with(double wire_mm) {
    Procedure procedure;
    procedure.name = "main";
    procedure.path = "procedures.main";
    procedure.filler = "steel/X1";
    procedure.wire = mm(wire_mm);
    procedure.gas = "M21";
    return procedure;
}

} // namespace

// Computed cases (the closed form by hand, no printed answer): solid steel of 7850 kg/m3 in g/m, to the last
// digit.
TEST_CASE("solid wire weighs its section times its density") {
    struct Row {
        double diameter;
        double grams;
    };
    for (const Row& row :
         {Row{0.8, 3.94584}, Row{0.9, 4.99395}, Row{1.0, 6.16538}, Row{1.2, 8.87814}, Row{1.6, 15.78336}}) {
        INFO(row.diameter << " mm");
        CHECK_THAT(solid_wire_mass(mm(row.diameter), in_si<Density>(7850)).value() * 1e3,
                   WithinAbs(row.grams, 5.1e-6));
    }
}

// Computed cases (weaker): f = a I + b l I^2 by hand with the coefficients above, in m/min; exact as written.
TEST_CASE("the melting curve gives the wire feed of a current") {
    struct Row {
        double current;
        double stick_out;
        double feed;
    };
    for (const Row& row :
         {Row{150, 15, 3.7125}, Row{200, 15, 5.4}, Row{250, 15, 7.3125}, Row{300, 18, 10.26}}) {
        INFO(row.current << " A, " << row.stick_out << " mm");
        CHECK_THAT(as_m_min(wire_feed_of(amps(row.current), mm(row.stick_out), norrish)),
                   WithinRel(row.feed, 1e-13));
        CHECK_THAT(current_of(m_min(row.feed), mm(row.stick_out), norrish).value(),
                   WithinRel(row.current, 1e-13));
    }
}

TEST_CASE("the current of the wire feed of a current is that current") {
    for (const double b : {0.0, 1e-9, 5.0e-5, 2.53e-4})
        for (const double current : {1.0, 60.0, 180.0, 450.0, 2000.0})
            for (const double stick_out : {0.5, 12.0, 40.0}) {
                INFO("b " << b << ", " << current << " A, " << stick_out << " mm");
                const MeltingCurve curve{{0.3, ""}, {b, ""}};
                const Speed feed = wire_feed_of(amps(current), mm(stick_out), curve);
                CHECK_THAT(current_of(feed, mm(stick_out), curve).value(), WithinRel(current, 1e-13));
            }
}

TEST_CASE("a diameter without a row takes the nearest one") {
    const Filler filler = solid();
    CHECK(nearest_size(filler, mm(0.9)).diameter == mm(0.9));
    CHECK(nearest_size(filler, mm(0.1)).diameter == mm(0.9));
    CHECK(nearest_size(filler, mm(1.04)).diameter == mm(0.9));
    CHECK(nearest_size(filler, mm(1.06)).diameter == mm(1.2));
    CHECK(nearest_size(filler, mm(5)).diameter == mm(1.2));
}

// Computed case (mass balance by hand): 1.2 mm, 8 m/min, 95 %, 7850 kg/m3: 4.04843 kg/h, to its last digit.
TEST_CASE("the deposition rate is wire mass times feed times efficiency") {
    Filler filler = solid();
    filler.wire_density = {in_si<Density>(7850), "own"};
    Procedure procedure = with(1.2);
    procedure.wire_feed = m_min(8);
    procedure.efficiency = 0.95;
    std::vector<Fault> faults;
    const auto laid = deposition(procedure, filler, faults);
    REQUIRE(laid);
    CHECK(faults.empty());
    CHECK_THAT(laid->rate.value() * factor::hour, WithinAbs(4.04843, 5e-6));
    CHECK(laid->density == in_si<Density>(7850));
    CHECK(laid->wire_feed == m_min(8));
    REQUIRE(laid->current);
    CHECK_THAT(wire_feed_of(*laid->current, mm(15), norrish).value(), WithinRel(m_min(8).value(), 1e-13));
}

TEST_CASE("solid wire is weighed with the diameter the job gives, with the wire's own density") {
    Procedure procedure = with(1.14);
    procedure.wire_feed = m_min(8);
    std::vector<Fault> faults;
    const auto laid = deposition(procedure, solid(), faults);
    REQUIRE(laid);
    CHECK_THAT(laid->linear_mass.value(), WithinRel(3.14159265358979 / 4 * 1.14e-3 * 1.14e-3 * 7800, 1e-13));
}

TEST_CASE("cored wire has the linear mass of its row") {
    Filler filler = solid();
    filler.form = FillerForm::cored;
    filler.wire_density.reset();
    filler.sizes[1].linear_mass = {in_si<LinearMass>(0.0072), "own"};
    Procedure procedure = with(1.2);
    procedure.wire_feed = m_min(8);
    std::vector<Fault> faults;
    const auto laid = deposition(procedure, filler, faults);
    REQUIRE(laid);
    CHECK(laid->linear_mass == in_si<LinearMass>(0.0072));
}

TEST_CASE("the efficiency is the job's, else the gas's, else the filler's") {
    const auto efficiency = [](std::optional<double> own, const char* gas) {
        Procedure procedure = with(1.2);
        procedure.wire_feed = m_min(8);
        procedure.efficiency = own;
        procedure.gas = gas;
        std::vector<Fault> faults;
        return deposition(procedure, solid(), faults).value().efficiency;
    };
    CHECK(efficiency(0.5, "C1") == 0.5);
    CHECK(efficiency({}, "C1") == 0.90);
    CHECK(efficiency({}, "M21") == 0.92);
}

TEST_CASE("a current alone gives the feed, with the job's stick-out before the filler's") {
    Procedure procedure = with(1.2);
    procedure.current = amps(300);
    std::vector<Fault> faults;
    // Worked by hand: 90 + 67.5 mm/s with 15 mm, 90 + 81 mm/s with 18 mm.
    CHECK_THAT(deposition(procedure, solid(), faults).value().wire_feed.value(), WithinRel(0.1575, 1e-13));
    procedure.stick_out = mm(18);
    CHECK_THAT(deposition(procedure, solid(), faults).value().wire_feed.value(), WithinRel(0.171, 1e-13));
    CHECK(faults.empty());
}

TEST_CASE("given both, feed and current stay as written") {
    Procedure procedure = with(1.2);
    procedure.wire_feed = m_min(8);
    procedure.current = amps(111);
    std::vector<Fault> faults;
    const auto laid = deposition(procedure, solid(), faults);
    REQUIRE(laid);
    CHECK(laid->wire_feed == m_min(8));
    CHECK(laid->current == amps(111));
}

TEST_CASE("without a melting curve a feed alone leaves the current open, a current alone is refused") {
    Procedure procedure = with(0.9);
    procedure.wire_feed = m_min(8);
    std::vector<Fault> faults;
    const auto laid = deposition(procedure, solid(), faults);
    REQUIRE(laid);
    CHECK_FALSE(laid->current);
    procedure.wire_feed.reset();
    procedure.current = amps(120);
    CHECK_FALSE(deposition(procedure, solid(), faults));
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) ==
          "procedures.main.current: gives no wire feed: no melting curve of steel/X1 is known; "
          "write \"wire_feed\" too");
}

TEST_CASE("faults found before do not spoil a sound procedure") {
    Procedure procedure = with(1.2);
    procedure.current = amps(200);
    std::vector<Fault> faults = {
        fault_at_path("bores[0].base", "\"steel/C4\"", "is not a known base metal", "")};
    CHECK(deposition(procedure, solid(), faults));
    CHECK(faults.size() == 1);
}
