#include <catch2/catch.hpp>

#include <cmath>

#include <ringfill/heat/unknown_metal.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

AskedCase unknown(Certificate of, double wall_mm = 24) {
    return {.base = "steel/unknown", .wall_mm = wall_mm, .certificate = std::move(of)};
}

} // namespace

TEST_CASE("unknown metal with a full certificate within method B is worked out by it alone") {
    const AskedCase mild = unknown(certificate(0.15, 0.90));
    const Preheat asked = mild.preheat();
    CHECK_FALSE(mild.what().not_the_grade);
    CHECK(mild.minimum() < 100);
    for (const PreheatMethod& method : asked.methods)
        CHECK((!method.applies || method.is_formula));
    CHECK_THAT(mild.maximum(), WithinAbs(250, 1e-9));          // as structural steel
    CHECK_THAT((unknown({}).minimum()), WithinAbs(230, 1e-9)); // without one as 4140
}

TEST_CASE("outside method B the row of the likest known grade stands beside it") {
    const AskedCase shaft = unknown(certificate(0.46, 0.75, 0.10, 0.02, 0.10), 42);
    const Base* likest = likest_grade(shaft.what());
    REQUIRE(likest);
    CHECK((likest->name == "1045" || likest->name == "C45"));
    CHECK_THAT(shaft.minimum(),
               WithinAbs(std::max(260.0, std::ceil(method_b_by_hand(0.5, 42, 5, 0.8) / 5) * 5), 1e-9));
    CHECK_THAT(shaft.maximum(), WithinAbs(350, 1e-9));
    const AskedCase rich = unknown(certificate(0.60, 0.80, 1.0, 0.3, 0.2), 60);
    CHECK_FALSE(likest_grade(rich.what()));
    CHECK_THAT(rich.minimum(), WithinAbs(315, 1e-9)); // the hottest row of that wall
}

TEST_CASE("the hottest row that stands for unknown metal rises with hydrogen too") {
    AskedCase rich = unknown(certificate(0.60, 0.80, 1.0, 0.3, 0.2), 60);
    rich.hydrogen = 30;
    CHECK_THAT(rich.minimum(),
               WithinAbs(std::ceil((315 + 62 * (std::pow(30, 0.35) - std::pow(8, 0.35))) / 5) * 5, 1e-9));
}

TEST_CASE("a certificate of quenched plate bounds the heat") {
    Certificate plate = certificate(0.16, 1.3, 0.5, 0.3, 0.4);
    const AskedCase asked = unknown(plate, 42);
    CHECK(asked.what().as_quenched);
    CHECK_THAT(asked.maximum(), WithinAbs(200, 1e-9));
    CHECK(asked.minimum() <= 175);
    CHECK_FALSE(asked.preheat().post_heat);
}

TEST_CASE("a carbon far under the grade asks what the metal is, as one over it does") {
    CHECK((AskedCase{.base = "steel/1045", .certificate = {{"C", 0.10}}}.what().not_the_grade.value()) ==
          "C 0.1 % is far under the 0.43 % of 1045");
    CHECK_FALSE((AskedCase{.base = "steel/1045", .certificate = {{"C", 0.40}}}.what().not_the_grade));
    CHECK_FALSE((AskedCase{.base = "steel/1045", .certificate = {{"C", 0.52}}}.what().not_the_grade));
    CHECK((AskedCase{.base = "steel/1045", .certificate = {{"C", 0.521}}}.what().not_the_grade));
    CHECK_FALSE((
        AskedCase{.base = "steel/4130", .certificate = {{"Cr", 1.20}}}.what().not_the_grade)); // a tenth over
    CHECK((AskedCase{.base = "steel/4130", .certificate = {{"Cr", 1.22}}}.what().not_the_grade));
}

TEST_CASE("a certificate over its grade asks for the higher of the grade's own and method B on it") {
    const AskedCase own{};
    const AskedCase over{.certificate = {{"C", 0.30}}};
    CHECK(over.what().not_the_grade);
    CHECK(over.minimum() >= own.minimum());
    CHECK_FALSE(method_named(over.preheat(), "tabulated practice taken for unknown metal"));
    const AskedCase lean{.certificate = {{"Cr", 0.60}, {"C", 0.05}, {"Mn", 0.5}}};
    CHECK(lean.what().not_the_grade);
    CHECK(lean.minimum() >= own.minimum()); // never under what the grade itself is asked for
}

// 1045 of 43 mm with E6013 was asked for over 300 °C.
TEST_CASE("a wet filler never lowers an answer, and says first what would") {
    for (const char* base : {"steel/1045", "steel/S355J2", "steel/A36", "steel/4140", "steel/S690QL"}) {
        INFO(base);
        const AskedCase dry{.base = base, .wall_mm = 43, .hydrogen = 0, .filler = "steel/ER70S-6"};
        const AskedCase wet{.base = base, .wall_mm = 43, .hydrogen = 0, .filler = "steel/E6013"};
        CHECK(wet.minimum() >= dry.minimum());
    }
    const AskedCase rutile{.base = "steel/1045", .wall_mm = 43, .hydrogen = 0, .filler = "steel/E6013"};
    CHECK_THAT(rutile.minimum(), WithinAbs(340, 1e-9)); // 260 and 62 (30^0.35 - 8^0.35)
    const auto lowered = rutile.preheat().lowered_by;
    REQUIRE_FALSE(lowered.empty());
    CHECK(lowered[0].by == LoweredBy::drier_filler);
    CHECK(lowered[0].kelvin > 70);
}
