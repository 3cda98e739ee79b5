#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

#include "identity/planned.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

std::map<std::string, Need> by_id(const Plan& plan) {
    std::map<std::string, Need> lines;
    for (const Need& line : plan.take)
        lines[need_id(line)] = line;
    CHECK(lines.size() == plan.take.size());
    return lines;
}

std::int64_t packs(const Need& line) {
    std::int64_t count = 0;
    for (const PackCount& pack : line.cover)
        count += pack.count;
    return count;
}

} // namespace

TEST_CASE("bores in another order are the same bores, with the same totals and the same to take") {
    for (const std::uint64_t seed : seeds_for(7)) {
        INFO("seed " << seed);
        const Sketch sketch = random_sketch(seed);
        Sketch turned = sketch;
        std::reverse(turned.bores.begin(), turned.bores.end());
        const Plan one = planned(sketch);
        const Plan other = planned(turned);
        for (std::size_t i = 0; i < one.bores.size(); ++i) {
            const BorePlan& same = other.bores[one.bores.size() - 1 - i];
            REQUIRE(one.bores[i].name == same.name);
            REQUIRE(one.bores[i].metal.laid == same.metal.laid);
            REQUIRE(one.bores[i].metal.wire == same.metal.wire);
            REQUIRE(one.bores[i].metal.arc == same.metal.arc);
        }
        REQUIRE(close(one.totals.laid.value(), other.totals.laid.value(), 1e-12));
        REQUIRE(close(one.totals.wire.value(), other.totals.wire.value(), 1e-12));
        REQUIRE(close(one.totals.arc.value(), other.totals.arc.value(), 1e-12));
        REQUIRE(close(one.totals.gas.value(), other.totals.gas.value(), 1e-12));
        const auto take = by_id(one);
        const auto take_other = by_id(other);
        REQUIRE(take.size() == take_other.size());
        for (const auto& [item, line] : take) {
            INFO(item);
            const Need& same = take_other.at(item);
            REQUIRE(close(line.need, same.need, 1e-12));
            REQUIRE(close(line.reserve, same.reserve, 1e-12));
            REQUIRE(line.supplied == same.supplied);
            REQUIRE(packs(line) == packs(same));
        }
    }
}
