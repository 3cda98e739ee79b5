#include <catch2/catch.hpp>

#include <ringfill/heat/deposit_analysis.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

DepositAnalysis deposit(const std::string& filler, const std::string& gas = "M21") {
    const Family& family = family_of(shop().registry, filler);
    Procedure procedure;
    procedure.gas = gas;
    for (const Filler& one : family.fillers)
        if (family.name + "/" + one.name == filler)
            return deposit_analysis(procedure, one);
    FAIL("no filler " << filler);
    return {};
}

} // namespace

// The class limits of ER70S-6, C 0.15 and Mn 1.85, are the wire's: its deposit holds less of both.
TEST_CASE("the usual deposit goes before the limits of the wire") {
    const DepositAnalysis usual = deposit("steel/ER70S-6");
    CHECK(usual.known_by == "usual");
    CHECK_THAT(share_of(usual.shares, "C"), WithinAbs(0.08, 1e-12));
    CHECK_THAT(share_of(usual.shares, "Mn"), WithinAbs(1.2, 1e-12));
}

TEST_CASE("solid wire without a row is the middle of its class, its manganese burnt off under the gas") {
    const DepositAnalysis m21 = deposit("steel/ER80S-D2");
    CHECK(m21.known_by == "the middle of its class");
    CHECK_THAT(share_of(m21.shares, "Mn"), WithinAbs((1.6 + 2.1) / 2 * 0.85, 1e-12));
    CHECK_THAT(share_of(m21.shares, "Mo"), WithinAbs(0.5, 1e-12));
    CHECK_THAT(share_of(deposit("steel/ER80S-D2", "C1").shares, "Mn"), WithinAbs(1.85 * 0.75, 1e-12));
    CHECK_THAT(share_of(deposit("steel/ER80S-D2", "M13").shares, "Mn"), WithinAbs(1.85 * 0.90, 1e-12));
    CHECK(share_of(deposit("steel/ER70S-7").shares, "C") <= 0.12);
    CHECK(deposit("steel/E6013").known_by == "the limits of its class"); // which are the deposit's
}

TEST_CASE("hardfacing, austenitic and nickel deposits have no say in a rule for ferritic weld metal") {
    for (const char* filler : {"hardfacing/T Fe1", "hardfacing/T Fe2", "hardfacing/T Fe10",
                               "stainless/ER309L", "stainless/18 8 Mn", "nickel/ERNiCr-3"}) {
        INFO(filler);
        CHECK_FALSE(deposit(filler).left_out.empty());
    }
    CHECK(deposit("steel/ER90S-B3").left_out.empty());
}

// 12 mm of S275JR was told 88 °C under it: metal of 13 % Cr hardens in air.
TEST_CASE("a deposit of 13 % chromium steel counts") {
    for (const char* filler : {"stainless/ER410", "stainless/ER410NiMo"}) {
        INFO(filler);
        CHECK(deposit(filler).left_out.empty());
    }
    const Preheat asked =
        AskedCase{.base = "steel/S275JR", .wall_mm = 12, .filler = "stainless/ER410"}.preheat();
    const PreheatMethod* b = method_named(asked, "EN 1011-2 method B");
    REQUIRE(b);
    CHECK_FALSE(b->in_range); // the CET of the deposit counts as the 0.50 % that the method ends at
    CHECK(deg_c(b->minimum.value()) > 150);
}

// 42 mm of S355J2 was asked for 329 °C by the CET of T Fe2; its own row asks for 300 °C at most.
TEST_CASE("the base is worked out all the same under a deposit that is left out") {
    const AskedCase hard{.wall_mm = 42, .filler = "hardfacing/T Fe2"};
    const Preheat asked = hard.preheat();
    const PreheatMethod* b = method_named(asked, "EN 1011-2 method B");
    REQUIRE(b);
    CHECK(deg_c(b->minimum.value()) < 180);
    CHECK_THAT(hard.minimum(), WithinAbs(300, 1e-9));
}

TEST_CASE("a measured analysis of the job goes before every table") {
    Procedure procedure;
    procedure.deposit = {{"C", 0.05}, {"Mn", 0.9}};
    const Filler& filler = family_of(shop().registry, "steel/C45").fillers.front();
    const DepositAnalysis measured = deposit_analysis(procedure, filler);
    CHECK(measured.known_by == "measured");
    CHECK_THAT(share_of(measured.shares, "Mn"), WithinAbs(0.9, 1e-12));
}
