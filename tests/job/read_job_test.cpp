#include <numbers>

#include <catch2/catch.hpp>

#include <ringfill/job/read_job.hpp>

#include "full_job.hpp"
#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

// Factors to SI typed from NIST SP 811 (2008), appendix B.8, from memory: 1 in = 0.0254 m, 1 ft = 0.3048 m,
// 1 lb = 0.45359237 kg, T/K = (t/degF + 459.67)/1.8; all exact. Tolerance: double rounding of a product or
// two.
constexpr double exact = 1e-14;

const Job& full() {
    static const Job job = job_from(full_job);
    return job;
}

template <class Quantity>
void check(const std::optional<Quantity>& read, double si) {
    REQUIRE(read);
    CHECK_THAT(read->value(), WithinRel(si, exact));
}

template <class Quantity>
void check(const Quantity& read, double si) {
    CHECK_THAT(read.value(), WithinRel(si, exact));
}

} // namespace

TEST_CASE("the head of a job and its site arrive in SI") {
    const Job& job = full();
    CHECK(job.title == "Bucket ears, peat cutter 12");
    CHECK(job.units == UnitSystem::inch);
    CHECK_THAT(job.reserve, WithinRel(0.15, exact));
    REQUIRE(job.site.ambient);
    CHECK_THAT(job.site.ambient->value(), WithinRel((41 + 459.67) / 1.8, exact)); // 278.15 K
    CHECK(job.site.wet == true);
    CHECK(job.site.indoors == true);
    CHECK(job.site.enclosed == true);
    check(job.site.room_volume, 1000 * 0.3048 * 0.3048 * 0.3048);
    check(job.site.ceiling, 120 * 0.0254); // a bare number is in the job's units
    CHECK(job.site.near == std::vector<std::string>{"tyre", "fuel"});
    CHECK(job.site.coating == "zinc");
    CHECK(job.site.residue == std::vector<std::string>{"oil", "dust"});
    CHECK(job.site.crew == std::vector<std::string>{"implant"});
    CHECK(job.site.fire_rules == "longest");
}

TEST_CASE("a procedure arrives in SI") {
    REQUIRE(full().procedures.size() == 1);
    const Procedure& procedure = full().procedures.front();
    CHECK(procedure.name == "ears");
    CHECK(procedure.path == "procedures.ears");
    CHECK(procedure.filler == "steel/ER70S-6");
    check(procedure.wire, 0.045 * 0.0254);
    REQUIRE(procedure.spools.size() == 2);
    check(procedure.spools[0], 33 * 0.45359237);
    check(procedure.spools[1], 5);
    CHECK(procedure.gas == "C1");
    check(procedure.wire_feed, 300 * 0.0254 / 60);
    check(procedure.current, 210);
    check(procedure.voltage, 24);
    check(procedure.travel, 12 * 0.0254 / 60);
    check(procedure.travel_max, 15 * 0.0254 / 60);
    CHECK(procedure.transfer == "spray");
    CHECK(procedure.torch_path == TorchPath::helix);
    CHECK(procedure.efficiency == 0.9);
    CHECK(procedure.bead_ratio == 3.5);
    CHECK(procedure.pitch_ratio == 0.7);
    check(procedure.gas_flow, 30 * 0.3048 * 0.3048 * 0.3048 / 3600);
    check(procedure.gas_before, 3);
    check(procedure.gas_after, 4);
    check(procedure.stick_out, 0.5 * 0.0254);
}

TEST_CASE("an approved procedure arrives in SI") {
    REQUIRE(full().procedures.front().approved);
    const Approved& approved = *full().procedures.front().approved;
    CHECK(approved.reference == "W-7");
    REQUIRE(approved.preheat_min);
    CHECK_THAT(approved.preheat_min->value(), WithinRel((300 + 459.67) / 1.8, exact));
    REQUIRE(approved.interpass_max);
    CHECK_THAT(approved.interpass_max->value(), WithinRel(260 + 273.15, exact));
    REQUIRE(approved.heat_input);
    check(approved.heat_input->first, 10e3 / 0.0254);
    check(approved.heat_input->second, 0.9e6);
    REQUIRE(approved.post_heat);
    REQUIRE(approved.post_heat->temperature);
    CHECK_THAT(approved.post_heat->temperature->value(), WithinRel(250 + 273.15, exact));
    check(approved.post_heat->time, 1.5 * 3600);
}

TEST_CASE("a bore arrives in SI") {
    REQUIRE(full().bores.size() == 3);
    const WornBore& bore = full().bores.front();
    CHECK(bore.name == "left ear");
    CHECK(bore.path == "bores[0]");
    CHECK(bore.count == 4);
    CHECK(bore.line == "ears");
    CHECK(bore.axis == "vertical");
    CHECK(bore.base == "steel/1045");
    CHECK(bore.composition == std::vector<std::pair<std::string, double>>{{"C", 0.44}, {"Mn", 0.7}});
    check(bore.finish_diameter, 3.5 * 0.0254);
    CHECK(bore.size_class == "H8");
    check(bore.length, 4 * 0.0254);
    check(bore.boss_diameter, 7 * 0.0254);
    REQUIRE(bore.attached.size() == 2);
    check(bore.attached[0].thickness, 0.0254);
    check(bore.attached[1].thickness, 0.020);
    check(bore.carry_off, 2.5);
    check(bore.heat_wall, 1.5 * 0.0254);
    check(bore.skim, 0.020 * 0.0254);
    check(bore.stock, 0.0625 * 0.0254);
    check(bore.overhang, 0.125 * 0.0254);
    CHECK(bore.procedure == "ears");
}

TEST_CASE("faces, grooves and holes arrive in SI") {
    const WornBore& bore = full().bores.front();
    REQUIRE(bore.faces.size() == 1);
    check(bore.faces[0].inner, 3.5 * 0.0254);
    check(bore.faces[0].outer, 6 * 0.0254);
    check(bore.faces[0].build, 0.125 * 0.0254);
    REQUIRE(bore.grooves.size() == 1);
    check(bore.grooves[0].diameter, 4 * 0.0254);
    check(bore.grooves[0].width, 0.25 * 0.0254);
    REQUIRE(bore.holes.size() == 1);
    check(bore.holes[0].diameter, 0.375 * 0.0254);
    check(bore.holes[0].depth, 2 * 0.0254);
    check(bore.holes[0].clock, std::numbers::pi);
    CHECK(bore.holes[0].other_end == "fitting");
}

TEST_CASE("the worn surface arrives in the form that it was given in") {
    const Worn& round = full().bores[0].worn;
    REQUIRE(round.diameter);
    check(*round.diameter, 3.7 * 0.0254);
    check(*round.offset, 0.010 * 0.0254);
    check(*round.offset_clock, std::numbers::pi / 2);
    CHECK(round.stations.empty());

    const Worn& radii = full().bores[1].worn;
    CHECK_FALSE(radii.diameter);
    REQUIRE(radii.stations.size() == 2);
    check(radii.stations[0].depth, 0.0254);
    check(radii.stations[1].depth, 3 * 0.0254);
    REQUIRE(radii.stations[1].radii.size() == 3);
    CHECK(radii.stations[1].diameters.empty());
    check(radii.stations[1].radii[0], 1.83 * 0.0254);
    check(radii.stations[1].radii[2], 1.85 * 0.0254);

    const Worn& diameters = full().bores[2].worn;
    CHECK_FALSE(diameters.diameter);
    REQUIRE(diameters.stations.size() == 1);
    REQUIRE(diameters.stations[0].diameters.size() == 2);
    CHECK(diameters.stations[0].radii.empty());
    check(diameters.stations[0].diameters[1], 3.72 * 0.0254);
    check(*diameters.offset, 0.005 * 0.0254);
    check(*diameters.offset_clock, std::numbers::pi / 4);
}

TEST_CASE("a skim of none and a procedure that need not be named") {
    CHECK_FALSE(full().bores[1].skim);
    CHECK(full().bores[1].procedure == "ears");
}

TEST_CASE("torch, heater, boring bar and prices arrive in SI") {
    const Job& job = full();
    check(job.torch.smallest_bore, 1.5 * 0.0254);
    check(job.torch.reach, 12 * 0.0254);
    REQUIRE(job.heater);
    CHECK(job.heater->kind == "acetylene");
    check(job.heater->power, 20e3);
    CHECK(job.heater->efficiency == 0.3);
    REQUIRE(job.boring.bar_speeds.size() == 2);
    check(job.boring.bar_speeds[0], 80.0 / 60);
    check(job.boring.bar_speeds[1], 2);
    CHECK(job.boring.tool == CuttingTool::hss);
    check(job.boring.cutting_speed, 200 * 0.3048 / 60);
    check(job.boring.feed, 0.005 * 0.0254);
    check(job.boring.rough_cut, 0.06 * 0.0254);
    check(job.boring.edge_life, 25 * 60);
    check(job.boring.stroke, 14 * 0.0254);
    CHECK(job.prices.currency == "EUR");
    const Prices& prices = job.prices;
    CHECK(prices.labour_hour == Decimal{85, 0});
    CHECK(prices.labour.size() == 9);
    CHECK(prices.labour[5] == NamedPrices::value_type{"boring", {855, 1}});
    CHECK(prices.watch_hour == Decimal{4025, 2});
    CHECK(prices.wire_kg == NamedPrices{{"steel/ER70S-6", {42, 1}}});
    CHECK(prices.packs == NamedPrices{{"CO2 cylinder", {315, 1}}});
    CHECK(prices.by_use);
    CHECK(prices.power_kwh == Decimal{3125, 4});
    CHECK(prices.fuel_litre == Decimal{17, 1});
    REQUIRE(prices.travel);
    CHECK(prices.travel->distance == Decimal{565, 1});
    CHECK(prices.travel->in_miles);
    check(prices.travel->time, 75 * 60);
    CHECK(prices.travel->trips == 3);
    CHECK(prices.drive == Decimal{9, 1});
    CHECK(prices.extras == NamedPrices{{"lodging", {240, 0}}});
    CHECK(prices.contingency == 5'000);
    CHECK(prices.markup == 12'500);
    CHECK(prices.tax == 8'875);
}
