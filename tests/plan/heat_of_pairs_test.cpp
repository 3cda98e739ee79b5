// How hot a pair of metals may be made, by the plan and from the product's own tables.

#include <catch2/catch.hpp>

#include <fmt/format.h>

#include <ringfill/say/heat_limits.hpp>
#include <ringfill/say/heat_sentences.hpp>

#include "plan/pair_of_metals.hpp"

using namespace ringfill;
using namespace ringfill::testing;
using Catch::WithinAbs;

namespace {

/// What further members an approved procedure P-1 of these members makes.
std::string approved(const std::string& members) {
    return fmt::format(R"(, "approved": {{ "reference": "P-1", {} }})", members);
}
std::string held(int degC) {
    return approved(fmt::format(R"("post_heat": {{ "temperature": "{} degC", "time": "2 h" }})", degC));
}
std::string heated(int least, int most) {
    return approved(fmt::format(R"("preheat_min": "{} degC", "interpass_max": "{} degC")", least, most));
}

std::string head(const Plan& plan) {
    return joined(head_sentences(plan));
}

/// The preheat of a filler on a metal in a wall of 43 mm, asked of the rules alone.
Preheat asked_of(const Family& family, const Base& base, const std::string& filler_name,
                 const Filler& filler) {
    Procedure procedure;
    procedure.filler = filler_name;
    return preheat(heat_case(WornBore(), procedure, Site(), family, base, filler, millimetres(43), {}));
}

} // namespace

// Cast iron, copper, nickel and austenitic metal go by practice of their own (preheat by EN 14700 is for the
// filler on steel): what a filler asks for itself must change nothing of theirs.
TEST_CASE("no filler's own practice heats cast iron, bronze, nickel or austenitic metal") {
    int judged = 0;
    for (const Family& metal : shop().registry.families())
        for (const Base& base : metal.bases)
            for (const Family& wires : shop().registry.families())
                for (const Filler& filler : wires.fillers) {
                    if (base.structure == "ferritic" || base.structure == "martensitic" || !filler.practice)
                        continue;
                    const std::string name = wires.name + "/" + filler.name;
                    INFO(name << " on " << base.name);
                    Filler plain = filler;
                    plain.practice.reset();
                    const Preheat with = asked_of(metal, base, name, filler);
                    const Preheat without = asked_of(metal, base, name, plain);
                    CHECK(with.minimum.has_value() == without.minimum.has_value());
                    if (with.minimum && without.minimum)
                        CHECK(with.minimum->value == without.minimum->value);
                    CHECK(with.interpass_max.has_value() == without.interpass_max.has_value());
                    if (with.interpass_max && without.interpass_max)
                        CHECK(with.interpass_max->value == without.interpass_max->value);
                    CHECK(with.state == without.state);
                    CHECK(with.methods.size() == without.methods.size() + 1); // it is told
                    ++judged;
                }
    CHECK(judged > 100);
}

TEST_CASE("hard metal on cast iron: preheat needed without a figure, no maximum, and it is said why") {
    const Plan made = pair("cast_iron/EN-GJL-250", "hardfacing/E Co2", stick);
    CHECK(head(made).find("Preheat needed, no figure known: b.") != std::string::npos);
    CHECK(warns(made, "what E Co2 asks for itself is 300 °C to 600 °C. Take another filler"));
    const Plan bronze = pair("cast_iron/EN-GJL-250", "bronze/ERCuAl-A2", argon); // the wire's own is 150
    CHECK(head(bronze).find("no ring begins") == std::string::npos);
    CHECK(head(pair("cast_iron/EN-GJL-250", "stainless/ER309L",
                    solid + approved(R"("interpass_max": "100 degC")")))
              .find("no ring begins over 100 °C") != std::string::npos);
}

// Preheat note of the product, 4.4: cast iron cracks between 200 and 450 degC; handbooks, memory.
TEST_CASE("iron laid cold that an approved procedure heats between 200 and 450 degC is a stop") {
    const std::string stopped = "STOP: cast iron that is laid cold cracks between 200 °C and 450 °C";
    const std::string fillers[] = {held(300), heated(300, 400), heated(20, 200), held(200), held(450)};
    for (const std::string& more : fillers) {
        INFO(more);
        const Plan made = pair("cast_iron/EN-GJL-250", "cast_iron/ENiFe-CI", stick + more);
        CHECK(head(made).starts_with(stopped));
        CHECK(made.cautions.at(0).text.starts_with("Stop: cast iron that is laid cold"));
        CHECK(joined(heat_sentences(made.bores[0].heat, UnitSystem::metric)).starts_with("Stop: cast iron"));
        CHECK_FALSE(takes(made, "blanket"));
        CHECK_FALSE(takes(made, "fuel propane"));
    }
    const Plan warm = pair("cast_iron/EN-GJL-250", "cast_iron/ENiFe-CI", stick + held(150));
    CHECK(head(warm).find("STOP") == std::string::npos);
    CHECK(warns(warm, "holds at 150 °C after welding, yet cast iron is cooled slowly and not held"));
    CHECK(head(pair("cast_iron/EN-GJL-250", "cast_iron/ENiFe-CI", stick)).find("STOP") == std::string::npos);
}

TEST_CASE("an approved hold of bronze and nickel goes to its author, and no blanket keeps them hot") {
    for (const auto& [base, filler] :
         {std::pair("bronze/C95400", "bronze/ERCuAl-A2"), std::pair("nickel/N06600", "nickel/ERNiCr-3")}) {
        const Plan made = pair(base, filler, argon + held(400));
        CHECK(warns(made, "holds at 400 °C after welding, yet"));
        CHECK_FALSE(takes(made, "blanket"));
    }
}

// Scenario G14 of the preheat note: 400 HB, 90 mm, a hold of 250 degC: refuse above about 220 degC, say why.
TEST_CASE("a hold that softens wear plate is a stop, and no fuel is loaded for it") {
    const std::string lean =
        R"("composition": { "C": 0.15, "Si": 0.4, "Mn": 1.3, "Cr": 0.5, "Mo": 0.15 }, "heat_wall": "90 mm",)";
    const Plan made = pair("steel/400HB", "steel/E70C-6M-H4", metal_cored + held(250), lean);
    CHECK(head(made).starts_with(
        "STOP: this steel softens over 225 °C, ask the author of the approved procedure: b.\n"));
    CHECK(head(made).find("Preheat ") != std::string::npos); // that of the rings stands
    CHECK(made.cautions.at(0).text.find("asks for a hold at 250 °C after welding") != std::string::npos);
    CHECK_FALSE(takes(made, "fuel propane"));
    CHECK_FALSE(takes(made, "blanket"));
    CHECK(head(pair("steel/400HB", "steel/E70C-6M-H4", metal_cored + held(200), lean)).find("STOP: this") ==
          std::string::npos);
    CHECK(head(pair("steel/400HB", "steel/E70C-6M-H4", metal_cored + heated(240, 300), lean))
              .starts_with("STOP: this steel softens over 225 °C"));
}

TEST_CASE("no blanket is loaded beside the advice to cool without one") {
    const auto one = [](const char* base, const char* filler, const std::string& procedure) {
        return pair(base, filler, procedure);
    };
    for (const Plan& made : {one("steel/400HB", "steel/ER70S-6", R"("gas": "M21", )" + cored),
                             one("bronze/C95400", "bronze/ERCuAl-A2", argon)}) {
        const std::string view = joined(heat_sentences(made.bores[0].heat, UnitSystem::metric));
        CHECK(view.find("without a blanket") != std::string::npos);
        CHECK(view.find("under a dry blanket") == std::string::npos);
        CHECK_FALSE(takes(made, "blanket"));
    }
    CHECK(takes(pair("steel/4140", "steel/E7018-H8", stick), "blanket"));
}

TEST_CASE("a filler laid hot never takes the steel under it over its own maximum") {
    for (const auto& [base, maximum] : {std::pair("steel/X10CrMoVNb9-1", 300.0),
                                        {"steel/A913-65", 200.0},
                                        {"steel/16Mo3", 350.0},
                                        {"steel/C45", 400.0},
                                        {"steel/4140", 400.0},
                                        {"steel/S355J2", 315.0},
                                        {"steel/A36", 315.0}})
        for (const auto& [filler, with] :
             {std::pair("hardfacing/E Co2", stick), std::pair("hardfacing/T Fe3", metal_cored)}) {
            INFO(filler << " on " << base);
            CHECK(deg_c(preheat_of(pair(base, filler, with)).interpass_max.value().value) < maximum + 1e-9);
        }
}

TEST_CASE("the head tells the whole range of a filler that is laid hot") {
    CHECK(head(pair("steel/A36", "hardfacing/E Co2", stick))
              .find("at least 300 °C (its filler is laid at 300 °C to 600 °C, an approved procedure settles "
                    "it); no ring begins over 315 °C") != std::string::npos);
    CHECK(warns(pair("stainless/316", "hardfacing/T Fe3", metal_cored),
                "what T Fe3 asks for itself is 300 °C to 500 °C."));
}

TEST_CASE("quenched plate with a wet wire contradicts itself, and is told a way out") {
    for (const char* base : {"steel/A514-Q"}) {
        INFO(base);
        const Plan made = pair(base, "steel/E71T-1", R"("gas": "M21", )" + cored);
        REQUIRE(preheat_of(made).state == PreheatState::contradictory);
        CHECK(head(made).find(" °C") == std::string::npos); // no figure to act on
        CHECK(warns(made, "Write the mill certificate of the part into bores[].composition"));
    }
    for (const char* base : {"steel/S690QL", "steel/A514-F", "steel/A514-Q", "steel/400HB"})
        CHECK(preheat_of(pair(base, "steel/ER70S-6", R"("gas": "M21", )" + cored)).state ==
              PreheatState::figure);
}

TEST_CASE("bronze and manganese metal on hardening steel have limits of their own from the second layer on") {
    for (const auto& [filler, with] :
         {std::pair("bronze/ERCuAl-A2", argon), std::pair("hardfacing/T Fe9", cored),
          std::pair("manganese_steel/EFeMn-A", stick)}) {
        const Plan made = pair("steel/4140", filler, with);
        INFO(filler);
        CHECK(preheat_of(made).state == PreheatState::figure);
        CHECK(preheat_of(made).later);
        CHECK(warns(made, "Keep two limits apart"));
    }
}

// EN 1011-2:2001 table C.2 puts solid wire under gas into scale D, 3 to 5 ml/100 g; memory.
TEST_CASE("solid wire of nickel and bronze counts with the hydrogen of solid wire") {
    const Plan made = pair("steel/4140", "nickel/ERNiCr-3", argon);
    CHECK_THAT(minimum(made), WithinAbs(260, 1e-9));
    for (const char* filler : {"hardfacing/E Co2", "manganese_steel/EFeMn-A", "nickel/ENiCrFe-3"})
        CHECK_FALSE(warns(pair("steel/4140", filler, stick), "This metal hardens"));
}

TEST_CASE("a second opinion under a method that is told already is not told beside it") {
    const Plan made = pair("steel/A36", "steel/ER70S-6",
                           R"("gas": "M21", )" + cored + approved(R"("preheat_min": "10 degC")"));
    CHECK(warns(made, "ask its author before the first arc"));
    CHECK_FALSE(warns(made, "that rule: have the procedure settled"));
}

TEST_CASE("manganese steel that is approved hand-warm is no stop") {
    const auto heated_to = [](int degC) {
        return pair("manganese_steel/A128-A", "manganese_steel/EFeMn-A",
                    stick + approved(fmt::format(R"("preheat_min": "{} degC")", degC)));
    };
    const Plan warm = heated_to(25);
    CHECK_FALSE(warns(warm, "Stop:"));
    CHECK_FALSE(warns(warm, "harmed by it"));
    CHECK(warm.bores[0].heat_balance);
    CHECK(warns(heated_to(50), "Stop: manganese steel is not heated"));
}

TEST_CASE("a hold is no ring that takes the boss over its maximum") {
    const Plan made = pair("bronze/C95400", "bronze/ERCuAl-A2", argon + held(400),
                           R"("attached": [ { "thickness": "40 mm" } ],)");
    REQUIRE(made.bores[0].heat_balance);
    CHECK(deg_c(made.bores[0].heat_balance->peak()) > 380);
    CHECK_FALSE(warns(made, "a ring still takes this boss"));
}

TEST_CASE("iron laid cold is left over night, and is not kept at a preheat that it has not") {
    const std::string text = R"({ "format": "ringfill-job/1", "title": "long", "units": "mm",
"site": { "ambient": "15 degC" }, "heater": { "kind": "propane" }, "working_day": "2 h",
"procedures": { "p": { "filler": "cast_iron/ENiFe-CI", "wire": "3.2 mm", "current": "120 A",
                       "voltage": "22 V", "travel": "250 mm/min" } },
"bores": [ { "name": "b", "base": "cast_iron/EN-GJL-250", "finish_diameter": "90 mm", "length": "200 mm",
             "boss_diameter": "178 mm", "worn": { "diameter": "92 mm" }, "procedure": "p" } ] })";
    const Plan planned = plan(job_from(text), shop());
    std::string notes;
    for (const std::string& note : planned.notes)
        notes += note + "\n";
    int parts = 0;
    for (const DayEntry& entry : planned.day->day.entries)
        if (entry.step == steps::weld_in_stitches) {
            ++parts;
            CHECK(entry.to - entry.from <= in_si<Time>(2 * 3600 + 1e-6)); // the working day
        }
    CHECK(parts > 2);
    CHECK(notes.find("keep it at its preheat") == std::string::npos);
}
