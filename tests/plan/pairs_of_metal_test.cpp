// What a pair of metals is told as a whole: by the plan, from the product's own tables.

#include <catch2/catch.hpp>

#include <algorithm>

#include <fmt/format.h>

#include <ringfill/report/text/take_text.hpp>
#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/heat_sentences.hpp>
#include <ringfill/units/metric.hpp>

#include "plan/pair_of_metals.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

// A carbon equivalent says nothing of metal with over 10 % Mn, Cr or Ni or 2 % C (common practice, no
// source); the CET of 2.775 % of EFeMn-A once made 2013 degC of A36.
TEST_CASE("no manganese, iron or austenitic filler has its carbon equivalent worked out on steel") {
    int judged = 0;
    for (const Family& family : testing::shop().registry.families())
        for (const Filler& filler : family.fillers) {
            const bool never = family.name == "manganese_steel" || family.name == "cast_iron" ||
                               filler.group == "manganese_filler" || filler.group == "buffer_filler";
            if (!never)
                continue;
            for (const char* base : {"steel/A36", "steel/4140", "steel/C45"}) {
                const std::string name = family.name + "/" + filler.name;
                INFO(name << " on " << base);
                Procedure procedure;
                procedure.filler = name;
                std::vector<Fault> faults;
                const HeatCase what = heat_case(
                    WornBore(), procedure, Site(), family_of(testing::shop().registry, base),
                    *find_base(testing::shop().registry, base, "", faults), filler, millimetres(43), {});
                int methods_b = 0;
                for (const PreheatMethod& method : preheat(what).methods) {
                    CHECK(method.note.find("the deposit governs") == std::string::npos);
                    if (!method.name.starts_with("EN 1011-2 method B"))
                        continue;
                    ++methods_b;
                    CHECK(method.note.find("the weld metal was not checked") != std::string::npos);
                }
                CHECK(methods_b > 0);
                ++judged;
            }
        }
    CHECK(judged > 50);
}

TEST_CASE("bronze on steel is always told of its first layer") {
    for (const char* base : {"steel/A36", "steel/4140"})
        for (const char* filler : {"bronze/ERCuAl-A1", "bronze/ERCuAl-A2", "bronze/ERCuNiAl"}) {
            INFO(filler << " on " << base);
            CHECK(warns(pair(base, filler, argon), "Lay the first layer as a buffer"));
        }
}

// The metal of these groups is laid at 300 to 500, 200 to 400 and 300 to 600 degC [EN 14700 guidance,
// memory]; the upper end is no safe end over steel that was tempered.
TEST_CASE("of a hot filler's range no more than 300 degC counts, and the whole is told") {
    const Plan soft = pair("steel/A36", "hardfacing/E Co2", stick);
    CHECK(minimum(soft) < 330); // method B with hydrogen of no class may ask for more than the filler
    CHECK(minimum(soft) >= 300 - 1e-9);
    CHECK(warns(soft,
                "the metal of hardfacing/E Co2 is laid at 300 °C to 600 °C, of which 300 °C counts here; the "
                "metal under it must not pass 315 °C."));
    const Plan hard = pair("steel/4140", "hardfacing/T Fe3", metal_cored);
    CHECK(minimum(hard) < 350);
    CHECK_THAT(most(hard), WithinAbs(350, 1e-9));
    CHECK(warns(hard, "the metal under it must not pass 350 °C"));
    CHECK_FALSE(warns(pair("steel/A36", "hardfacing/T Fe1", metal_cored), "is laid at"));
}

// NAVSEA S9074-AR-GIB-010/278, table IV: with 410NiMo filler 300 to 500 degF; B31.3 has 200 degC for the
// steel.
TEST_CASE("the row for 410NiMo filler holds with that filler alone") {
    const auto has_row = [](const Plan& plan) {
        return std::any_of(preheat_of(plan).methods.begin(), preheat_of(plan).methods.end(),
                           [](const PreheatMethod& method) {
                               return method.name.find("with 410NiMo") != std::string::npos;
                           });
    };
    const Plan own = pair("stainless/410", "stainless/ER410NiMo", solid);
    CHECK(has_row(own));
    CHECK_THAT(most(own), WithinAbs(260, 1e-9));
    CHECK(has_row(pair("stainless/X3CrNiMo13-4", "stainless/ER410NiMo", solid)));
    CHECK_FALSE(has_row(pair("stainless/410", "stainless/ER410", solid)));
    CHECK_FALSE(has_row(pair("stainless/X3CrNiMo13-4", "stainless/ER309L", solid)));
}

TEST_CASE("plate of 400 HB is quenched, and is not told of a tempering") {
    const Plan plate = pair("steel/400HB", "steel/ER70S-6", R"("gas": "M21", )" + cored);
    CHECK_THAT(most(plate), WithinAbs(225, 1e-9));
    const std::string view = joined(heat_sentences(plate.bores[0].heat, UnitSystem::metric));
    CHECK(view.find("tempered at") == std::string::npos);
    CHECK(view.find("without a blanket") != std::string::npos);
}

TEST_CASE("a buffer has the base's limits on the first layer and its own from the second on") {
    for (const auto& [filler, base] :
         {std::pair("stainless/ER309L", "steel/4140"), std::pair("stainless/18 8 Mn", "steel/C45"),
          std::pair("stainless/ER309L", "stainless/410"), std::pair("nickel/ERNiCr-3", "steel/4140")}) {
        INFO(filler << " on " << base);
        const Plan made = pair(base, filler, std::string(filler).starts_with("nickel") ? argon : solid);
        CHECK(preheat_of(made).state == PreheatState::figure);
        REQUIRE(preheat_of(made).later);
        CHECK_THAT(deg_c(preheat_of(made).later->minimum.value), WithinAbs(120, 1e-9));
        CHECK(
            joined(heat_sentences(made.bores[0].heat, UnitSystem::metric)).find("From the second layer on") !=
            std::string::npos);
        CHECK(joined(head_sentences(made)).find("from the second layer on at least 120 °C") !=
              std::string::npos);
    }
}

TEST_CASE("a carburised case is asked for before 8620 is welded") {
    CHECK(
        joined(heat_sentences(pair("steel/8620", "steel/ER70S-6", R"("gas": "M21", )" + cored).bores[0].heat,
                              UnitSystem::metric))
            .find("Ask whether it was carburised") != std::string::npos);
}

// ASTM A128 steel goes brittle when it is hot for long; handbooks, memory: no preheat, at most 260 degC.
TEST_CASE("manganese steel that an approved procedure heats is a stop, and nothing is loaded to heat it") {
    const std::string heated =
        R"(, "approved": { "reference": "P-1", "preheat_min": "200 degC", "interpass_max": "350 degC",
            "post_heat": { "temperature": "300 degC", "time": "2 h" } })";
    const Plan made = pair("manganese_steel/A128-A", "manganese_steel/EFeMn-A", stick + heated);
    CHECK(made.cautions.at(0).text == "Stop: manganese steel is not heated, yet the approved procedure P-1 "
                                      "asks for a preheat of 200 °C, rings "
                                      "that begin at up to 350 °C, a hold at 300 °C after welding. Ask its "
                                      "author before any flame and any arc; "
                                      "nothing to heat it with is counted.");
    CHECK(joined(head_sentences(made))
              .starts_with(
                  "STOP: manganese steel is not heated, ask the author of the approved procedure: b.\n"));
    CHECK(joined(head_sentences(made)).find("Preheat at least") == std::string::npos);
    CHECK(joined(heat_sentences(made.bores[0].heat, UnitSystem::metric))
              .starts_with("Stop: manganese steel is not heated."));
    for (const char* item : {"blanket", "fuel propane"})
        CHECK_FALSE(takes(made, item));
    const Plan cold = pair("manganese_steel/A128-A", "manganese_steel/EFeMn-A",
                           stick + R"(, "approved": { "reference": "P-1", "preheat_min": "15 degC" })");
    CHECK_FALSE(warns(cold, "Stop:"));
}

TEST_CASE(
    "manganese steel laid cold is a stop too when the approved procedure only holds it hot afterwards") {
    const Plan held = pair("manganese_steel/A128-A", "manganese_steel/EFeMn-A",
                           stick + R"(, "approved": { "reference": "P-1", "preheat_min": "15 degC",
            "interpass_max": "150 degC", "post_heat": { "temperature": "300 degC", "time": "2 h" } })");
    REQUIRE_FALSE(held.cautions.empty());
    CHECK(held.cautions[0].text.starts_with(
        "Stop: manganese steel is not heated, yet the approved procedure P-1 "
        "asks for "));
    CHECK(held.cautions[0].text.find("a hold at 300 °C after welding. Ask its author before any flame") !=
          std::string::npos);
    for (const char* item : {"blanket", "fuel propane"})
        CHECK_FALSE(takes(held, item));
}

// Martensitic metal is tempered once it has cooled, as heat_balance.hpp says: held while it is still hot it
// would not be tempered.
TEST_CASE("the hold of martensitic metal is no part of its heat balance, and a note says so") {
    const Plan made = pair("stainless/410", "stainless/ER410",
                           solid + R"(, "approved": { "reference": "P-1", "preheat_min": "200 degC",
            "interpass_max": "300 degC", "post_heat": { "temperature": "700 degC", "time": "2 h" } })");
    const BorePlan& bore = made.bores.front();
    REQUIRE(bore.heat_balance);
    REQUIRE(bore.heat.preheat.post_heat);
    CHECK_FALSE(bore.heat_balance->hot.settings.hold_at);
    CHECK(bore.heat_balance->cold().run.post_heat_heat == Energy());
    CHECK(
        std::count(made.notes.begin(), made.notes.end(),
                   "b: the hold after welding follows once it has cooled; it is no part of the times and the "
                   "fuel here.") == 1);
}

TEST_CASE("manganese steel is never pushed to the heat of what is laid on it") {
    const Plan made = pair("manganese_steel/A128-A", "hardfacing/T Fe14", cored);
    CHECK_FALSE(warns(made, "much more than"));
    CHECK(warns(made, "Do not heat this metal for its filler: what T Fe14 asks for itself is 20 °C to 200 "
                      "°C."));
}

TEST_CASE("metal nobody can name is told that a magnet holds on cast iron too") {
    for (const char* magnet : {"", R"("magnetic": true,)"}) {
        const Plan made = pair("steel/unknown", "steel/ER70S-6", R"("gas": "M21", )" + cored, magnet);
        CHECK(warns(made, "file, chip or spark test to tell steel from cast iron"));
    }
}

TEST_CASE(
    "an electrode of no hydrogen class on steel that hardens is told to give way to one of low hydrogen") {
    CHECK(warns(pair("steel/A36", "steel/E6013", stick), "Use a low-hydrogen filler first"));
    CHECK_FALSE(warns(pair("steel/A36", "steel/E7018-H8", stick), "low-hydrogen"));
    CHECK(warns(pair("steel/4140", "hardfacing/E Fe1", stick), "or use a low-hydrogen one"));
}
