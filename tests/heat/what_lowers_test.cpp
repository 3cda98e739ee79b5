#include <catch2/catch.hpp>

#include <cmath>

#include "heat/asked_case.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

constexpr double rounding_K = 5;

const Lowering* lowering(const Preheat& preheat, LoweredBy by) {
    for (const Lowering& one : preheat.lowered_by)
        if (one.by == by)
            return &one;
    return nullptr;
}

const PreheatMethod* ruling(const Preheat& preheat) {
    for (const PreheatMethod& method : preheat.methods)
        if (method.rules)
            return &method;
    return nullptr;
}

/// What it was told to save is what it saves.
void saves(const AskedCase& asked, const AskedCase& other, const Lowering& told) {
    INFO(asked.base << " of " << *asked.wall_mm << " mm at " << asked.hydrogen
                    << " ml: " << deg_c(asked.preheat().minimum->value) << ", told " << told.kelvin
                    << " K less, " << deg_c(other.preheat().minimum->value));
    CHECK(std::abs(asked.minimum() - other.minimum() - told.kelvin) <= rounding_K + 1e-9);
}

} // namespace

TEST_CASE("every answer of a formula names what would lower it, and by how many kelvin") {
    int answers = 0;
    for (const Base& base : family_of(shop().registry, "steel/C45").bases)
        for (const double wall : {12.0, 24.0, 42.0, 70.0})
            for (const double hydrogen : {4.0, 12.0}) {
                const AskedCase asked{.base = "steel/" + base.name, .wall_mm = wall, .hydrogen = hydrogen};
                const Preheat found = asked.preheat();
                const PreheatMethod* rules = ruling(found);
                if (!rules || !rules->is_formula || rules->as_hot_as_it_bears ||
                    deg_c(found.minimum->value) < 20 + 2 * rounding_K)
                    continue;
                ++answers;
                INFO(base.name << " of " << wall << " mm at " << hydrogen << " ml");
                CHECK(lowering(found, LoweredBy::certificate));
                const Lowering* drier = lowering(found, LoweredBy::drier_filler);
                REQUIRE(drier);
                AskedCase dry = asked;
                dry.hydrogen = drier->figure;
                saves(asked, dry, *drier);
                const Lowering* more_heat = lowering(found, LoweredBy::more_heat_input);
                REQUIRE(more_heat);
                AskedCase hot = asked;
                hot.heat_kj_mm = more_heat->figure / 1e6;
                saves(asked, hot, *more_heat);
            }
    CHECK(answers > 30);
}

TEST_CASE("a row that was raised over its hydrogen names a drier filler") {
    for (const char* base : {"steel/1045", "steel/4140", "steel/8620", "steel/G20Mn5"}) {
        const AskedCase wet{.base = base, .wall_mm = 24, .hydrogen = 15};
        const Preheat found = wet.preheat();
        const Lowering* drier = lowering(found, LoweredBy::drier_filler);
        INFO(base);
        REQUIRE(drier);
        AskedCase dry = wet;
        dry.hydrogen = drier->figure;
        saves(wet, dry, *drier);
    }
}
