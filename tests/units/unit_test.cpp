#include <catch2/catch.hpp>

#include <ringfill/units/unit.hpp>

using namespace ringfill;

TEST_CASE("a unit is found by its symbol and kind, capitals counted") {
    REQUIRE(find_unit("mm", Kind::length));
    CHECK(find_unit("mm", Kind::length)->factor == 1e-3);
    CHECK_FALSE(find_unit("MM", Kind::length));
    CHECK_FALSE(find_unit("mm", Kind::mass));
    CHECK_FALSE(find_unit("", Kind::length));
    CHECK(find_unit("kg")->kind == Kind::mass);
    CHECK_FALSE(find_unit("furlong"));
}

TEST_CASE("the first symbol of a kind is the one that messages show") {
    CHECK(symbols_of(Kind::length).front() == "mm");
    CHECK(symbols_of(Kind::temperature).front() == "degC");
    CHECK(symbols_of(Kind::volume_flow).front() == "L/min");
    CHECK(symbols_of(Kind::text).empty());
    CHECK(symbols_of(Kind::number).empty());
}
