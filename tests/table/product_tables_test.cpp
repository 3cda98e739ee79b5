#include <catch2/catch.hpp>

#include <algorithm>

#include <ringfill/table/gases.hpp>
#include <ringfill/table/packs.hpp>
#include <ringfill/table/shelf.hpp>
#include <ringfill/table/wear_parts.hpp>

using namespace ringfill;

namespace {

const Shelf own{{RINGFILL_TABLES}};

Bibliography sources() {
    return read_sources(table_files(own, "sources.json"));
}

} // namespace

TEST_CASE("the bibliography loads and has its reserved keys") {
    const Bibliography found = sources();
    REQUIRE(found.count("practice") == 1);
    REQUIRE(found.count("own") == 1);
    CHECK(found.at("practice").kind == "practice");
    CHECK(found.at("own").kind == "own");
}

TEST_CASE("every pack of wire and gas has a positive content and a known source") {
    const Bibliography known = sources();
    const Packs packs = read_packs(table_files(own, "packs.json"), known);
    REQUIRE_FALSE(packs.wire.empty());
    REQUIRE_FALSE(packs.gas.empty());
    for (const WirePack& pack : packs.wire) {
        INFO(pack.name);
        CHECK(pack.content.value.value() > 0);
        CHECK(known.count(pack.content.source) == 1);
    }
    for (const GasPack& pack : packs.gas) {
        INFO(pack.name);
        CHECK(pack.usable().value() > 0);
        CHECK(pack.usable() <= pack.content.value);
        CHECK(known.count(pack.content.source) == 1);
    }
}

TEST_CASE("every gas can be had in cylinders of both systems of units") {
    const Packs packs = read_packs(table_files(own, "packs.json"), sources());
    for (const Gas& gas : read_gases(table_files(own, "gases.json"), sources())) {
        INFO(gas.name);
        CHECK(gas.flow_L_min_per_mm.value > 0);
        CHECK(sources().count(gas.composition_source) == 1);
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
            CHECK(std::any_of(packs.gas.begin(), packs.gas.end(), [&](const GasPack& pack) {
                return pack.holds == gas.holds && pack.units == units && pack.stocked;
            }));
    }
}

TEST_CASE("the wear parts load with all their figures") {
    const WearParts wear = read_wear_parts(table_files(own, "wear_parts.json"), sources());
    CHECK(wear.tip_life.value.value() > 0);
    CHECK(wear.nozzle_life.value.value() > 0);
    CHECK(wear.liner_life.value.value() > 0);
    CHECK(wear.liner_length.value.value() > 0);
}
