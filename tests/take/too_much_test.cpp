#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

#include <fmt/format.h>

#include <ringfill/take/take.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

Need need_of(double need, double reserve) {
    Need line;
    line.kind = kinds::gas;
    line.substance = "M21";
    line.need = need;
    line.reserve = reserve;
    return line;
}

/// A pin of 50 mm laid with a rod so thick.
std::string rod_job(const char* rod, const char* size, const char* count = "1") {
    return fmt::format(R"({{ "format": "ringfill-job/1", "title": "rods", "units": "mm",
"procedures": {{ "p": {{ "filler": "steel/ER70S-2", "wire": "{}", "gas": "I1", "gas_flow": "600 L/min", "current": "120 A", "voltage": "13 V",
                       "deposition_rate": "0.5 kg/h", "travel": "100 mm/min", "travel_max": "600 m/min" }} }},
"bores": [ {{ "name": "b", "count": {}, "base": "steel/S355J2", "finish_diameter": "{} mm", "length": "{} mm",
             "worn": {{ "diameter": "{} mm" }} }} ] }})",
                       rod, count, size, size, std::stod(size) + 4);
}

std::string refusal_of(const std::string& text) {
    try {
        plan(job_from(text), shop());
    } catch (const Faulty& faulty) {
        CHECK(faulty.origin() == Origin::job);
        return faulty.what();
    }
    return "planned";
}

} // namespace

TEST_CASE("more of one thing than anybody can bring is a fault, and so is a need that is no number") {
    CHECK(too_much({need_of(8e11, 1e11), need_of(0, 0)}, UnitSystem::metric).empty());
    const auto faults = too_much({need_of(1, 0), need_of(1e12, 1e11)}, UnitSystem::metric);
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) == "bores: need 1.1e+12 L of gas M21, with the reserve; check counts, sizes, "
                                  "speeds, flow and reserve");
    CHECK(too_much({need_of(std::numeric_limits<double>::infinity(), 0)}, UnitSystem::metric).size() == 1);
    CHECK(too_much({need_of(std::numeric_limits<double>::quiet_NaN(), 0)}, UnitSystem::metric).size() == 1);
}

// A rod of 2 nm once made -2147483648 rods of a trial ring.
TEST_CASE("a rod thinner than a hair is out of range") {
    CHECK(refusal_of(rod_job("0.000002 mm", "50"))
              .starts_with(
                  "job.json:2:59: procedures.p.wire: \"0.000002 mm\" is out of range; give a value from "
                  "0.1 mm to 10 mm\n"));
    CHECK(refusal_of(rod_job("0.1 mm", "50")) == "planned");
}

TEST_CASE("more rods for one bore than a million are refused") {
    CHECK(
        refusal_of(rod_job("0.1 mm", "5000")) ==
        "procedures.p.wire: takes more than 1000000 rods for b; take thicker ones, and check the bore's size "
        "and wear");
}

TEST_CASE("gas that nobody could bring is refused") {
    CHECK(refusal_of(rod_job("2 mm", "5000", "10000")).starts_with("bores: need "));
}

// The heat of one ring in a boss of a hair's length once ended in an error of the quadrature.
TEST_CASE("a boss of a hair's length is planned with numbers, or said to have no heat balance") {
    const Plan made = plan(job_from(R"({ "format": "ringfill-job/1", "title": "hair", "units": "mm",
"procedures": { "p": { "filler": "bronze/ERCuAl-A1", "wire": "0.889 mm", "gas": "I1", "wire_feed": "6.48 m/min",
                       "current": "124.8 A", "voltage": "27.08 V", "travel": "708.16 mm/min",
                       "approved": { "reference": "P-12", "interpass_max": "300 degC" } } },
"bores": [ { "name": "b", "base": "steel/1045", "finish_diameter": "9990 mm", "length": "0.001 mm",
             "carry_off": "2 W/K", "attached": [ { "thickness": "3.5509215404021193 in" } ], "boss_diameter": "9991.000002002002 mm",
             "worn": { "diameter": "9990.000000002 mm" } } ] })"),
                           shop());
    const auto& balance = made.bores.at(0).heat_balance;
    CHECK(balance.has_value() == made.bores.at(0).no_balance.empty());
    if (balance) {
        CHECK(std::isfinite(balance->peak().value()));
        CHECK(std::isfinite(balance->hot.run.lost.value()));
    }
}

// A smooth curve through such readings once gave a bore worn to less than nothing.
TEST_CASE("readings so far apart that the bore would be worn inside out are refused") {
    std::string text = rod_job("2 mm", "120");
    text.replace(text.find(R"("worn": {)"), std::string::npos,
                 R"("worn": { "stations": [ { "depth": 40, "radii": [60.8, 60.9, 25.4, 0.001] } ] } } ] })");
    CHECK(refusal_of(text) ==
          "bores[0].worn: has readings of b so far apart that a smooth curve through them passes "
          "the target axis; check the readings for a slip");
}
