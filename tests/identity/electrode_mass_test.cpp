// What an electrode lays, held against what it is made of.

#include <catch2/catch.hpp>

#include <numbers>

#include "shop_for_tests.hpp"

using namespace ringfill;

// Metal comes of the core, and of iron powder in the covering alone; even that adds no more than a quarter to
// electrodes of these kinds (ISO 2401 measures up to some 125 % of them; common practice). The whole weighs
// more than its core.
TEST_CASE("no electrode lays more metal than it holds") {
    std::size_t judged = 0;
    for (const Family& family : testing::shop().registry.families())
        for (const Filler& filler : family.fillers)
            for (const WireSize& size : filler.sizes) {
                if (filler.form != FillerForm::stick)
                    continue;
                INFO(family.name << '/' << filler.name << ' ' << size.name << " mm");
                const double core = std::numbers::pi / 4 * size.diameter.value() * size.diameter.value() *
                                    size.length.value.value() * filler.wire_density.value().value.value();
                const double whole = size.mass.value().value.value();
                CHECK(whole > core);
                CHECK(whole * filler.efficiency.value <= core * (filler.iron_powder ? 1.25 : 1.0));
                CHECK(whole * filler.efficiency.value > 0.75 * core);
                ++judged;
            }
    CHECK(judged >= 28);
}
