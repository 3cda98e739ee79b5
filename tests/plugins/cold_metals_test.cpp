// Metals that heat harms, or that only one heat suits: manganese steel, cast iron, nickel and bronze.

#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/heat/preheat.hpp>
#include <ringfill/units/metric.hpp>

#include "shop_for_tests.hpp"

using namespace ringfill;
using Catch::WithinAbs;

namespace {

const Registry& registry() {
    return testing::shop().registry;
}

const Base& grade(const std::string& name) {
    std::vector<Fault> faults;
    const Base* found = find_base(registry(), name, "", faults);
    REQUIRE(found);
    return *found;
}

const Filler& filler_of(const std::string& name) {
    std::vector<Fault> faults;
    const Filler* found = find_filler(registry(), name, "", faults);
    REQUIRE(found);
    return *found;
}

/// The answer for a metal and a filler in a wall of 40 mm.
Preheat answer(const std::string& base, const std::string& filler) {
    Procedure procedure;
    procedure.filler = filler;
    const HeatCase what = heat_case(WornBore(), procedure, Site(), family_of(registry(), base), grade(base),
                                    filler_of(filler), millimetres(40), in_si<EnergyPerLength>(0.8e6));
    return preheat(what);
}

std::vector<std::string> all_fillers() {
    std::vector<std::string> names;
    for (const Family& family : registry().families())
        for (const Filler& filler : family.fillers)
            names.push_back(family.name + "/" + filler.name);
    return names;
}

std::vector<std::string> grades_of(const std::string& family) {
    std::vector<std::string> names;
    for (const Base& base : family_of(registry(), family + "/any").bases)
        names.push_back(family + "/" + base.name);
    return names;
}

bool gives(const Preheat& preheat, const std::string& value) {
    return std::any_of(preheat.values.begin(), preheat.values.end(),
                       [&](const AnsweredFigure& figure) { return figure.name == value; });
}

bool advises(const Preheat& preheat, const std::string& kind) {
    return std::any_of(preheat.advice.begin(), preheat.advice.end(),
                       [&](const Advice& advice) { return advice.kind == kind; });
}

/// Whether anything in an answer is a carbon equivalent, or was reached with one.
bool has_carbon_equivalent(const Preheat& preheat) {
    const auto speaks = [](const std::string& text) {
        return text.find("CE") != std::string::npos || text.find("Pcm") != std::string::npos ||
               text.find("EN 1011") != std::string::npos;
    };
    for (const char* name : {"CE_IIW_pct", "Pcm_pct", "CET_pct", "CEN_pct"})
        if (gives(preheat, name))
            return true;
    return std::any_of(preheat.methods.begin(), preheat.methods.end(), [&](const PreheatMethod& method) {
        return speaks(method.name) || speaks(method.formula);
    });
}

double minimum(const Preheat& preheat) {
    return deg_c(preheat.minimum.value().value);
}
double most(const Preheat& preheat) {
    return deg_c(preheat.interpass_max.value().value);
}

} // namespace

TEST_CASE("manganese steel never gets preheat, slow cooling or a hold, whatever is laid on it") {
    std::size_t judged = 0;
    for (const std::string& base : grades_of("manganese_steel"))
        for (const std::string& filler : all_fillers()) {
            INFO(base << " with " << filler);
            const Preheat preheat = answer(base, filler);
            CHECK(preheat.state == PreheatState::none);
            CHECK(minimum(preheat) <= 20 + 1e-9);
            CHECK(most(preheat) <= 260 + 1e-9); // 13 mm beside the weld, handbooks from memory
            CHECK_FALSE(preheat.post_heat);
            CHECK_FALSE(advises(preheat, "post_heat"));
            CHECK_FALSE(advises(preheat, "soak"));
            CHECK_FALSE(gives(preheat, "post_heat_K"));
            CHECK_FALSE(gives(preheat, "cooling_max_K_per_h"));
            CHECK_FALSE(has_carbon_equivalent(preheat));
            for (const Advice& advice : preheat.advice)
                if (advice.kind == "slow_cooling")
                    CHECK(advice.text ==
                          "Cool it fast, in the open or with water: no blanket, no furnace, no "
                          "hold after the weld.");
            ++judged;
        }
    CHECK(judged > 200);
}

TEST_CASE("cast iron never meets a carbon equivalent, whatever is laid on it") {
    std::size_t judged = 0;
    for (const std::string& base : grades_of("cast_iron"))
        for (const std::string& filler : all_fillers()) {
            INFO(base << " with " << filler);
            const Preheat preheat = answer(base, filler);
            CHECK_FALSE(has_carbon_equivalent(preheat));
            CHECK(preheat.minimum);
            CHECK_FALSE(preheat.post_heat);
            ++judged;
        }
    CHECK(judged > 200);
}

TEST_CASE("no other family but steel works out a carbon equivalent") {
    for (const char* family : {"stainless", "nickel", "bronze"})
        for (const std::string& base : grades_of(family))
            for (const std::string& filler : all_fillers()) {
                INFO(base << " with " << filler);
                CHECK_FALSE(has_carbon_equivalent(answer(base, filler)));
            }
}

TEST_CASE("grey iron is welded cold with nickel and hand-warm between beads") {
    for (const char* filler : {"cast_iron/ENi-CI", "cast_iron/ENiFe-CI", "cast_iron/ERNi-CI",
                               "cast_iron/ERNiFeMn-CI", "cast_iron/ENiFeT3-CI", "nickel/ERNi-1"}) {
        INFO(filler);
        const Preheat preheat = answer("cast_iron/EN-GJL-250", filler);
        CHECK(preheat.state == PreheatState::none);
        CHECK_THAT(most(preheat), WithinAbs(60, 1e-9)); // of the 60 to 70 degC of handbooks the lower
        CHECK_FALSE(gives(preheat, "cooling_max_K_per_h"));
        CHECK(advises(preheat, "technique"));
        CHECK_FALSE(advises(preheat, "soak"));
    }
}

TEST_CASE("grey iron is welded hot with an iron rod and cooled in the furnace") {
    const Preheat preheat = answer("cast_iron/EN-GJL-250", "cast_iron/RCI");
    CHECK_THAT(minimum(preheat), WithinAbs(500, 1e-9));
    CHECK_THAT(most(preheat), WithinAbs(650, 1e-9));
    CHECK(gives(preheat, "cooling_max_K_per_h"));
    CHECK(advises(preheat, "soak"));
    CHECK(preheat.state != PreheatState::contradictory);
}

// A text on electrodes for cast iron, read in an excerpt: 150 to 170 degC for those with an iron or steel
// core; the upper end counts.
TEST_CASE("grey iron is welded warm with steel") {
    for (const char* filler : {"steel/ER70S-6", "steel/E7018-H8", "hardfacing/T Fe1"}) {
        INFO(filler);
        const Preheat preheat = answer("cast_iron/EN-GJL-250", filler);
        CHECK(minimum(preheat) >= 170 - 1e-9);
        CHECK(most(preheat) <= 320 + 1e-9);
        CHECK(advises(preheat, "slow_cooling"));
    }
    CHECK_THAT(minimum(answer("cast_iron/EN-GJL-250", "steel/ER70S-6")), WithinAbs(170, 1e-9));
}

TEST_CASE("a filler that no practice is known for on cast iron is never answered with no preheat") {
    for (const char* filler : {"stainless/ER309L", "bronze/ERCuAl-A2", "bronze/ERCuSi-A", "stainless/18 8 Mn",
                               "manganese_steel/EFeMn-A", "hardfacing/T Fe14", "hardfacing/E Co2"}) {
        INFO(filler);
        const Preheat preheat = answer("cast_iron/EN-GJL-250", filler);
        CHECK(preheat.state == PreheatState::needed_without_figure);
    }
}

TEST_CASE("nodular iron is never welded cold: its own table rules") {
    for (const std::string& filler : all_fillers()) {
        INFO(filler);
        CHECK(minimum(answer("cast_iron/EN-GJS-400-15", filler)) >= 200 - 1e-9);
        CHECK(minimum(answer("cast_iron/EN-GJS-600-3", filler)) >= 250 - 1e-9);
    }
    const Preheat preheat = answer("cast_iron/EN-GJS-400-15", "cast_iron/ENiFe-CI");
    CHECK_THAT(minimum(preheat), WithinAbs(200, 1e-9));
    CHECK(most(preheat) > 200);
    CHECK(advises(preheat, "soak"));
}

TEST_CASE("nickel alloys and bronze stay cool and are advised no blanket") {
    for (const char* pair : {"nickel/N06625 nickel/ERNiCrMo-3", "bronze/C95400 bronze/ERCuAl-A2"}) {
        const std::string both = pair;
        const Preheat preheat = answer(both.substr(0, both.find(' ')), both.substr(both.find(' ') + 1));
        INFO(both);
        CHECK(most(preheat) <= 150 + 1e-9);
        CHECK(minimum(preheat) <= 50 + 1e-9);
        CHECK(std::any_of(preheat.advice.begin(), preheat.advice.end(), [](const Advice& advice) {
            return advice.text == "Let it cool in the open, without a blanket.";
        }));
    }
}
