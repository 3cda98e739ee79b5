#include <catch2/catch.hpp>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

TEST_CASE("a usable practice row rules, and method B is told beside it") {
    const AskedCase shaft{.base = "steel/1045", .wall_mm = 24};
    const Preheat asked = shaft.preheat();
    CHECK(asked.minimum->by == "tabulated practice for 1045");
    CHECK_THAT(shaft.minimum(), WithinAbs(200, 1e-9));
    CHECK_FALSE(method_named(asked, "EN 1011-2 method B")->applies);
}

TEST_CASE("a table for structural steel that lists the grade rules alone") {
    const AskedCase thin{.base = "steel/A36", .wall_mm = 12};
    CHECK(thin.preheat().state == PreheatState::none);
    CHECK_THAT(thin.minimum(), WithinAbs(20, 1e-9));
    const AskedCase thick{.base = "steel/A572-50", .wall_mm = 70};
    CHECK_THAT(thick.minimum(), WithinAbs(110, 1e-9)); // as printed, not 107.2 °C
    CHECK(thick.preheat().minimum->by == "AWS D1.1 minimum table, category B");
    CHECK_FALSE(method_named(thick.preheat(), "AWS D1.1 hydrogen-control annex")->applies);
    CHECK_THAT((AskedCase{.base = "steel/A36", .wall_mm = 24, .hydrogen = 30}.minimum()),
               WithinAbs(65, 1e-9));
}

TEST_CASE("structural steel over 19 mm at a low heat input is asked for 65 degC at least") {
    CHECK_THAT((AskedCase{.base = "steel/A36", .wall_mm = 24, .heat_kj_mm = 0.49}.minimum()),
               WithinAbs(65, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/A36", .wall_mm = 24, .heat_kj_mm = {}}.minimum()),
               WithinAbs(65, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/A36", .wall_mm = 24, .heat_kj_mm = 0.5}.minimum()),
               WithinAbs(20, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/A36", .wall_mm = 19.05, .heat_kj_mm = 0.3}.minimum()),
               WithinAbs(20, 1e-9));
}

TEST_CASE("of two categories the one for the hydrogen there is") {
    CHECK_THAT((AskedCase{.base = "steel/A913-65", .wall_mm = 42, .hydrogen = 8}.minimum()),
               WithinAbs(20, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/A913-65", .wall_mm = 42, .hydrogen = 9}.minimum()),
               WithinAbs(110, 1e-9));
}

TEST_CASE("a document that lists a grade by its class alone never rules it") {
    for (const char* base :
         {"steel/1018", "steel/1045", "steel/C45", "steel/4130", "steel/8620", "steel/A148 105-85"})
        for (const PreheatMethod& method : AskedCase{.base = base, .wall_mm = 42}.preheat().methods) {
            INFO(base << ", " << method.name);
            if (method.name.starts_with("AWS D1.1") || method.name.starts_with("ASME") ||
                method.name.starts_with("NAVSEA"))
                CHECK_FALSE(method.applies);
        }
}

TEST_CASE(
    "creep steel goes by the higher of its document and method B, and by documents alone past its alloy") {
    const Preheat p4 = AskedCase{.base = "steel/13CrMo4-5", .wall_mm = 24}.preheat();
    CHECK(method_named(p4, "ASME B31.3-2014 P-4")->applies);
    CHECK(method_named(p4, "EN 1011-2 method B")->applies);
    CHECK_FALSE(method_named(p4, "ASME B31.3-2010 P-4")->applies); // an older edition
    const AskedCase p91{.base = "steel/X10CrMoVNb9-1", .wall_mm = 24};
    CHECK_THAT(p91.minimum(), WithinAbs(200, 1e-9));
    CHECK_FALSE(method_named(p91.preheat(), "EN 1011-2 method B")->applies);
    CHECK_THAT((AskedCase{.base = "steel/12Ni14", .wall_mm = 24}.minimum()), WithinAbs(150, 1e-9));
}

TEST_CASE("the document that the job works by rules where its own list names the grade") {
    const AskedCase older{.base = "steel/16Mo3", .wall_mm = 24, .document = "ASME B31.3-2010"};
    CHECK(older.preheat().minimum->by == "ASME B31.3-2010 P-3");
    CHECK_THAT(older.minimum(), WithinAbs(79, 1e-9)); // as printed
    CHECK_FALSE(older.preheat().unlisted_rules);
    const Preheat unlisted = AskedCase{.base = "steel/1045", .wall_mm = 24, .document = "AWS D1.1"}.preheat();
    CHECK(unlisted.unlisted_rules);
    CHECK(unlisted.minimum->by == "tabulated practice for 1045");
    const AskedCase plate{.base = "steel/A514-F", .wall_mm = 50, .document = "AWS D1.1"};
    CHECK(plate.preheat().minimum->by == "AWS D1.1 minimum for A514 and A517");
    CHECK_THAT(plate.maximum(), WithinAbs(230, 1e-9));
    CHECK_THAT((AskedCase{.base = "steel/A514-F", .wall_mm = 50}.maximum()), WithinAbs(210, 1e-9));
}

TEST_CASE("the annex, Seferian and Table C.1 never rule") {
    for (const char* base : {"steel/S355J2", "steel/S235JR", "steel/1018", "steel/A36", "steel/16Mo3"})
        for (const double hydrogen : {3.0, 12.0, 20.0})
            for (const PreheatMethod& method :
                 AskedCase{.base = base, .wall_mm = 70, .hydrogen = hydrogen, .heat_kj_mm = 1.2}
                     .preheat()
                     .methods)
                if (method.name == "AWS D1.1 hydrogen-control annex" || method.name == "Séférian" ||
                    method.name == "EN 1011-2 method A, Table C.1") {
                    INFO(base << ", " << method.name);
                    CHECK_FALSE(method.applies);
                    CHECK(method.second_opinion);
                }
}
